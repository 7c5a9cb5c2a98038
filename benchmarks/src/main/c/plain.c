/*
 * The sums of the bench written plainly: a pad on its rim by a grid, a key by small steps, first-order shares by
 * differences, a mass in air by draws. Called with the viscosity and density of air, the damping of the bumper and how many
 * numbers a plan reckons; prints one line a sum: name, value, processor seconds of one time, the best of several.
 */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define TURN 6.283185307179586
#define GRID 2048
#define DRAWS 1000000

static double viscosity, density, damping;
static int numbers;

static const double radius = 0.009, arm = 0.03, stiffness = 2e5, torque = 0.01, width = 1.2e-3, pressure = 1000;
static double lever[GRID], rim[GRID];

static double torque_at(double q) {
    double sum = 0;
    for (int i = 0; i < GRID; i++) {
        double u = lever[i] * q + rim[i];
        sum += u > 0 ? u * lever[i] : 0;
    }
    return sum * stiffness * radius * TURN / GRID;
}

static double lowest_at(double q) {
    double lowest = 1;
    for (int i = 0; i < GRID; i++) {
        double u = lever[i] * q + rim[i];
        lowest = u < lowest ? u : lowest;
    }
    return lowest;
}

static double leak_of(double gap) {
    double lag = 12 * viscosity * width / (gap * gap), loss = 1.5 * density;
    return 2 * pressure / (lag + sqrt(lag * lag + 2 * loss * pressure));
}

/* Rest, gaps, leak and sealing torque of one pad; gives the leak in mL/s. */
static double seat(void) {
    for (int i = 0; i < GRID; i++) {
        double f = TURN * (i + 0.5) / GRID;
        lever[i] = arm + radius * cos(f);
        rim[i] = 50e-6 * cos(2 * f) + 10e-6 * sin(3 * f);
    }
    double low = -0.01, high = 0.01;
    for (int i = 0; i < 40; i++) {
        double middle = (low + high) / 2;
        if (torque_at(middle) < torque) low = middle; else high = middle;
    }
    double leak = 0, cubed = 0, area = 0;
    for (int i = 0; i < GRID; i++) {
        double gap = -(lever[i] * low + rim[i]);
        if (gap > 0) {
            cubed += gap * gap * gap;
            area += gap * radius;
            leak += leak_of(gap) * gap * radius;
        }
    }
    double shut_low = low, shut_high = 0.02;
    for (int i = 0; i < 40; i++) {
        double middle = (shut_low + shut_high) / 2;
        if (lowest_at(middle) < 0) shut_low = middle; else shut_high = middle;
    }
    static volatile double seen;
    seen = cubed + area + torque_at(shut_high);
    return 1e6 * leak * TURN / GRID;
}

static double acceleration(double q, double w, double stop) {
    double deep = 0.012 * (q - stop);
    double push = deep <= 0 ? 0 : 200 * pow(1e3, 1.5) * pow(deep, 1.5) * (1 + damping * 0.012 * w);
    double pull = 0.012 - 0.02 * q - (w > 0 ? 0.0005 : w < 0 ? -0.0005 : 0);
    return (pull - 0.012 * (push > 0 ? push : 0)) / 2.75e-6;
}

/* A key from release through 45 ms in steps of a microsecond; gives its first rebound in mm. */
static double action(void) {
    double stop = 0.005 / 0.025, step = 1e-6, q = 0, w = 0, first = 0;
    for (double t = 0; t < 0.045; t += step) {
        double middle = w + step / 2 * acceleration(q, w, stop);
        double after = w + step * acceleration(q + step / 2 * w, middle, stop);
        if (first == 0 && w < 0 && after >= 0) first = 25 * (stop - q);
        q += step * middle;
        w = after;
    }
    return first;
}

static double gap(const double in[3]) {
    return in[0] * in[1] / (in[2] - in[1] / 2);
}

/* As many numbers as a plan reckons, each from three lengths; gives the sum of their uncertainties. */
static double first_order(void) {
    static volatile double start[3] = {0.1, 28, 32.4};
    double u[3] = {0.02, 0.1, 0.5}, sum = 0;
    for (int n = 0; n < numbers; n++) {
        double values[3] = {start[0], start[1], start[2]}, square = 0;
        for (int i = 0; i < 3; i++) {
            double up[3], down[3];
            memcpy(up, values, sizeof up);
            memcpy(down, values, sizeof down);
            up[i] += 0.1 * u[i];
            down[i] -= 0.1 * u[i];
            double share = (gap(up) - gap(down)) / 0.2;
            square += share * share;
        }
        sum += sqrt(square);
    }
    return sum;
}

static uint64_t state = 88172645463325252ULL;

static double even(void) {
    state ^= state << 13;
    state ^= state >> 7;
    state ^= state << 17;
    return (state >> 11) * 0x1p-53;
}

static double normal(void) {
    static double spare;
    static int kept;
    if (kept) {
        kept = 0;
        return spare;
    }
    double x, y, s;
    do {
        x = 2 * even() - 1;
        y = 2 * even() - 1;
        s = x * x + y * y;
    } while (s >= 1 || s == 0);
    double times = sqrt(-2 * log(s) / s);
    spare = y * times;
    kept = 1;
    return x * times;
}

static int by_size(const void *a, const void *b) {
    double x = *(const double *) a, y = *(const double *) b;
    return (x > y) - (x < y);
}

/* A million draws, sorted; gives the lower end of the symmetric interval in mg. */
static double mass(void) {
    static double results[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
        double whole = 100000 + 0.050 * normal() + 1.234 + 0.020 * normal();
        double air = 1.1 + 0.2 * even(), weight = 7000 + 2000 * even(), reference = 7950 + 100 * even();
        results[i] = whole * (1 + (air - 1.2) * (1 / weight - 1 / reference)) - 100000;
    }
    qsort(results, DRAWS, sizeof results[0], by_size);
    return results[DRAWS / 40];
}

static void tell(const char *name, double (*sum)(void), int rounds, int times) {
    double value = 0, best = 1e9;
    for (int i = 0; i < rounds; i++) {
        clock_t start = clock();
        for (int j = 0; j < times; j++) value = sum();
        double took = (double) (clock() - start) / CLOCKS_PER_SEC / times;
        best = took < best ? took : best;
    }
    printf("%s %.12g %.6g\n", name, value, best);
}

int main(int count, char **words) {
    if (count != 5) return 2;
    viscosity = atof(words[1]);
    density = atof(words[2]);
    damping = atof(words[3]);
    numbers = atoi(words[4]);
    tell("seat", seat, 15, 100);
    tell("action", action, 15, 10);
    tell("first-order", first_order, 15, 1000);
    tell("mass", mass, 5, 1);
    return 0;
}
