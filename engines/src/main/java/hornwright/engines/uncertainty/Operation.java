package hornwright.engines.uncertainty;

/** What joins two values. */
enum Operation {
    PLUS("+") {
        @Override
        double at(double x, double y) {
            return x + y;
        }

        @Override
        double slopeLeft(double x, double y) {
            return 1;
        }

        @Override
        double slopeRight(double x, double y) {
            return 1;
        }
    },
    MINUS("-") {
        @Override
        double at(double x, double y) {
            return x - y;
        }

        @Override
        double slopeLeft(double x, double y) {
            return 1;
        }

        @Override
        double slopeRight(double x, double y) {
            return -1;
        }
    },
    TIMES("*") {
        @Override
        double at(double x, double y) {
            return x * y;
        }

        @Override
        double slopeLeft(double x, double y) {
            return y;
        }

        @Override
        double slopeRight(double x, double y) {
            return x;
        }
    },
    OVER("/") {
        @Override
        double at(double x, double y) {
            return x / y;
        }

        @Override
        double slopeLeft(double x, double y) {
            return 1 / y;
        }

        @Override
        double slopeRight(double x, double y) {
            return -x / (y * y);
        }
    },
    POWER("^") {
        @Override
        double at(double x, double y) {
            return y == 2 ? x * x : Math.pow(x, y);
        }

        @Override
        double slopeLeft(double x, double y) {
            return y == 0 ? 0 : y * Math.pow(x, y - 1);
        }

        @Override
        double slopeRight(double x, double y) {
            return Math.pow(x, y) * Math.log(x);
        }
    },
    MIN("min") {
        @Override
        double at(double x, double y) {
            return Math.min(x, y);
        }

        @Override
        double slopeLeft(double x, double y) {
            return x <= y ? 1 : 0;
        }

        @Override
        double slopeRight(double x, double y) {
            return x <= y ? 0 : 1;
        }
    },
    MAX("max") {
        @Override
        double at(double x, double y) {
            return Math.max(x, y);
        }

        @Override
        double slopeLeft(double x, double y) {
            return x >= y ? 1 : 0;
        }

        @Override
        double slopeRight(double x, double y) {
            return x >= y ? 0 : 1;
        }
    };

    final String word;

    Operation(String word) {
        this.word = word;
    }

    abstract double at(double x, double y);

    abstract double slopeLeft(double x, double y);

    abstract double slopeRight(double x, double y);
}
