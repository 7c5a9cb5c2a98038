package hornwright.engines.linkage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Keys that can feel one another, numbered in the order in which they are best eliminated, with the pattern of their
 * stiffness matrix. Links form near-trees, so taking the key with the fewest neighbours first leaves almost no fill.
 */
final class Island {
    /** Keys of the mechanism, in the order of elimination. */
    final int[] keys;
    /** Contact rows that touch these keys. */
    final int[] rows;
    /** Places of each row's keys in {@link #keys}; second -1 where the row has one key. */
    final int[] first;

    final int[] second;
    /** Entry of the matrix that couples the two keys of a row, -1 where there is one key. */
    final int[] entry;
    /** Entries below the diagonal of column p: start[p] to start[p+1], each in line below[e]. */
    final int[] start;

    final int[] below;
    /** Where each product of two entries of one column goes, in the order in which elimination meets them. */
    final int[] fill;

    private Island(int[] keys, int[] rows, Contacts contacts) {
        this.rows = rows;
        int[] place = new int[Arrays.stream(keys).max().orElse(0) + 1];
        List<Set<Integer>> near = neighbours(keys, rows, contacts, place);
        List<List<Integer>> columns = new ArrayList<>();
        this.keys = eliminate(keys, near, columns, place);
        start = new int[keys.length + 1];
        for (int p = 0; p < keys.length; p++) {
            start[p + 1] = start[p] + columns.get(p).size();
        }
        below = new int[start[keys.length]];
        for (int p = 0; p < keys.length; p++) {
            int[] sorted =
                    columns.get(p).stream().mapToInt(k -> place[k]).sorted().toArray();
            System.arraycopy(sorted, 0, below, start[p], sorted.length);
        }
        fill = fill();
        first = new int[rows.length];
        second = new int[rows.length];
        entry = new int[rows.length];
        for (int r = 0; r < rows.length; r++) {
            first[r] = place[contacts.key1[rows[r]]];
            int other = contacts.key2[rows[r]];
            second[r] = other < 0 ? -1 : place[other];
            entry[r] = other < 0 ? -1 : find(Math.min(first[r], second[r]), Math.max(first[r], second[r]));
        }
    }

    /** All islands of a mechanism of so many keys. */
    static List<Island> of(int keyCount, Contacts contacts) {
        int[] group = new int[keyCount];
        Arrays.setAll(group, i -> i);
        for (int row = 0; row < contacts.size(); row++) {
            if (contacts.key2[row] >= 0) {
                int one = root(group, contacts.key1[row]);
                int two = root(group, contacts.key2[row]);
                group[Math.max(one, two)] = Math.min(one, two);
            }
        }
        List<List<Integer>> keys = new ArrayList<>();
        List<List<Integer>> rows = new ArrayList<>();
        for (int i = 0; i < keyCount; i++) {
            keys.add(new ArrayList<>());
            rows.add(new ArrayList<>());
        }
        for (int i = 0; i < keyCount; i++) {
            keys.get(root(group, i)).add(i);
        }
        for (int row = 0; row < contacts.size(); row++) {
            rows.get(root(group, contacts.key1[row])).add(row);
        }
        List<Island> islands = new ArrayList<>();
        for (int i = 0; i < keyCount; i++) {
            if (!keys.get(i).isEmpty()) {
                islands.add(new Island(ints(keys.get(i)), ints(rows.get(i)), contacts));
            }
        }
        return islands;
    }

    private static int root(int[] group, int key) {
        int at = key;
        while (group[at] != at) {
            group[at] = group[group[at]];
            at = group[at];
        }
        return at;
    }

    private static int[] ints(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    private static List<Set<Integer>> neighbours(int[] keys, int[] rows, Contacts contacts, int[] place) {
        List<Set<Integer>> near = new ArrayList<>();
        for (int i = 0; i < keys.length; i++) {
            place[keys[i]] = i;
            near.add(new TreeSet<>());
        }
        for (int row : rows) {
            if (contacts.key2[row] >= 0) {
                near.get(place[contacts.key1[row]]).add(contacts.key2[row]);
                near.get(place[contacts.key2[row]]).add(contacts.key1[row]);
            }
        }
        return near;
    }

    /** Fewest neighbours first; columns gets what each eliminated key still touched, place its number in the order. */
    private static int[] eliminate(int[] keys, List<Set<Integer>> near, List<List<Integer>> columns, int[] place) {
        int[] local = place.clone();
        boolean[] gone = new boolean[keys.length];
        int[] order = new int[keys.length];
        for (int p = 0; p < keys.length; p++) {
            int least = -1;
            for (int i = 0; i < keys.length; i++) {
                if (!gone[i]
                        && (least < 0 || near.get(i).size() < near.get(least).size())) {
                    least = i;
                }
            }
            gone[least] = true;
            order[p] = keys[least];
            List<Integer> left = List.copyOf(near.get(least));
            columns.add(left);
            for (int one : left) {
                near.get(local[one]).remove(keys[least]);
                near.get(local[one]).addAll(left);
                near.get(local[one]).remove(one);
            }
        }
        for (int p = 0; p < order.length; p++) {
            place[order[p]] = p;
        }
        return order;
    }

    private int[] fill() {
        List<Integer> targets = new ArrayList<>();
        for (int p = 0; p < keys.length; p++) {
            for (int e = start[p]; e < start[p + 1]; e++) {
                for (int f = e + 1; f < start[p + 1]; f++) {
                    targets.add(find(below[e], below[f]));
                }
            }
        }
        return ints(targets);
    }

    private int find(int column, int line) {
        for (int e = start[column]; e < start[column + 1]; e++) {
            if (below[e] == line) {
                return e;
            }
        }
        throw new IllegalStateException("the pattern lacks " + column + ", " + line);
    }
}
