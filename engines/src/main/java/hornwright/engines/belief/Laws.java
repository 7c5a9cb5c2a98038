package hornwright.engines.belief;

import java.util.ArrayList;
import java.util.List;

/**
 * Every way of working that is thought possible: one material; two side by side in tenths; three in sixths. Of each kind
 * all are equally likely beforehand. Ways that mix share {@code mixing} among the kinds there are.
 */
final class Laws {
    private static final int OF_TWO = 10;
    private static final int OF_THREE = 6;

    final int materials;
    /** Share of each material, by material and way, so that sums over all ways run along one array. */
    final double[][] shares;

    final double[] prior;
    /** Which materials each way uses, as a number that is the same for ways that share the same materials out differently. */
    final int[] uses;

    private int sets;

    Laws(int materials, double mixing) {
        this.materials = materials;
        List<double[]> twos = new ArrayList<>();
        List<double[]> threes = new ArrayList<>();
        for (int a = 0; a < materials; a++) {
            for (int b = a + 1; b < materials; b++) {
                twos(a, b, twos);
                for (int c = b + 1; c < materials; c++) {
                    threes(a, b, c, threes);
                }
            }
        }
        int kinds = (twos.isEmpty() ? 0 : 1) + (threes.isEmpty() ? 0 : 1);
        int ways = materials + twos.size() + threes.size();
        shares = new double[materials][ways];
        prior = new double[ways];
        uses = new int[ways];
        double pure = kinds == 0 ? 1 : 1 - mixing;
        for (int k = 0; k < materials; k++) {
            prior[k] = pure / materials;
            shares[k][k] = 1;
            uses[k] = k;
        }
        sets = materials;
        fill(twos, materials, mixing / kinds);
        fill(threes, materials + twos.size(), mixing / kinds);
    }

    private void twos(int a, int b, List<double[]> twos) {
        for (int i = 1; i < OF_TWO; i++) {
            double[] way = new double[materials];
            way[a] = i / (double) OF_TWO;
            way[b] = (OF_TWO - i) / (double) OF_TWO;
            twos.add(way);
        }
    }

    private void threes(int a, int b, int c, List<double[]> threes) {
        for (int i = 1; i < OF_THREE - 1; i++) {
            for (int j = 1; i + j < OF_THREE; j++) {
                double[] way = new double[materials];
                way[a] = i / (double) OF_THREE;
                way[b] = j / (double) OF_THREE;
                way[c] = (OF_THREE - i - j) / (double) OF_THREE;
                threes.add(way);
            }
        }
    }

    private void fill(List<double[]> ways, int from, double together) {
        for (int i = 0; i < ways.size(); i++) {
            prior[from + i] = together / ways.size();
            for (int k = 0; k < materials; k++) {
                shares[k][from + i] = ways.get(i)[k];
            }
            uses[from + i] = i > 0 && sameMaterials(ways.get(i - 1), ways.get(i)) ? sets - 1 : sets++;
        }
    }

    private static boolean sameMaterials(double[] one, double[] other) {
        boolean same = true;
        for (int k = 0; k < one.length; k++) {
            same &= one[k] > 0 == other[k] > 0;
        }
        return same;
    }

    /** How many different sets of materials the ways use. */
    int sets() {
        return sets;
    }

    int ways() {
        return prior.length;
    }

    /** Adds up, over all ways, how likely each is times what it puts in. */
    double[] sharesUnder(double[] chances) {
        double[] sum = new double[materials];
        for (int k = 0; k < materials; k++) {
            double[] of = shares[k];
            for (int z = 0; z < of.length; z++) {
                sum[k] += chances[z] * of[z];
            }
        }
        return sum;
    }

    /** Chance of a way that mixes. */
    double mixed(double[] chances) {
        double sum = 0;
        for (int z = materials; z < chances.length; z++) {
            sum += chances[z];
        }
        return sum;
    }
}
