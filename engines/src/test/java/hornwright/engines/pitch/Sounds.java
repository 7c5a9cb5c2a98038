package hornwright.engines.pitch;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/** Sounds made for the tests. */
final class Sounds {
    static final double RATE = 44_100;
    /** Partials falling as 1/h, six of them. */
    static final double[] SIX = {1, 1 / 2.0, 1 / 3.0, 1 / 4.0, 1 / 5.0, 1 / 6.0};

    private Sounds() {}

    static double[] tone(double frequency, double seconds, double rate, double... partials) {
        return glide(t -> frequency, seconds, rate, partials);
    }

    /** A tone whose frequency may change with time; partials above a third of the rate are left out. */
    static double[] glide(DoubleUnaryOperator frequency, double seconds, double rate, double... partials) {
        double[] x = new double[(int) (seconds * rate)];
        double phase = 0.3;
        double sum = 0;
        for (double partial : partials) {
            sum += Math.abs(partial);
        }
        for (int i = 0; i < x.length; i++) {
            double f = frequency.applyAsDouble(i / rate);
            for (int h = 1; h <= partials.length; h++) {
                x[i] += h * f < rate / 3 ? 0.5 * partials[h - 1] / sum * Math.sin(h * phase + h * h) : 0;
            }
            phase += 2 * Math.PI * f / rate;
        }
        return x;
    }

    static double[] silence(double seconds) {
        return new double[(int) (seconds * RATE)];
    }

    static double[] noise(double seconds, double amplitude, Random random) {
        double[] x = silence(seconds);
        for (int i = 0; i < x.length; i++) {
            x[i] = amplitude * random.nextGaussian();
        }
        return x;
    }

    static double[] together(double[] a, double[] b) {
        double[] sum = a.clone();
        for (int i = 0; i < Math.min(a.length, b.length); i++) {
            sum[i] += b[i];
        }
        return sum;
    }

    static double[] oneAfterAnother(double[]... parts) {
        int length = 0;
        for (double[] part : parts) {
            length += part.length;
        }
        double[] all = new double[length];
        int at = 0;
        for (double[] part : parts) {
            System.arraycopy(part, 0, all, at, part.length);
            at += part.length;
        }
        return all;
    }

    static double[] louder(double[] x, double times) {
        double[] y = x.clone();
        for (int i = 0; i < y.length; i++) {
            y[i] *= times;
        }
        return y;
    }

    /** Soft edges of 10 ms, as a reed's. */
    static double[] tongued(double[] x) {
        double[] y = x.clone();
        int edge = (int) (0.01 * RATE);
        for (int i = 0; i < edge; i++) {
            y[i] *= i / (double) edge;
            y[y.length - 1 - i] *= i / (double) edge;
        }
        return y;
    }

    /** What a room adds: noise that dies away, by so many dB a second, started by the sound. */
    static double[] inARoom(double[] x, double share, Random random) {
        int tail = (int) (0.3 * RATE);
        double[] room = new double[tail];
        for (int i = 0; i < tail; i++) {
            room[i] = share * random.nextGaussian() * Math.exp(-6.9 * i / tail) / Math.sqrt(tail);
        }
        double[] y = x.clone();
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < tail && j <= i; j += 7) {
                y[i] += 2.6 * room[j] * x[i - j];
            }
        }
        return y;
    }
}
