package hornwright.engines.uncertainty;

/** What may be called with one argument, by the name it has in a model. */
enum Function {
    NEGATE("-") {
        @Override
        double at(double x) {
            return -x;
        }

        @Override
        double slope(double x) {
            return -1;
        }
    },
    SQRT("sqrt") {
        @Override
        double at(double x) {
            return Math.sqrt(x);
        }

        @Override
        double slope(double x) {
            return 0.5 / Math.sqrt(x);
        }
    },
    EXP("exp") {
        @Override
        double at(double x) {
            return Math.exp(x);
        }

        @Override
        double slope(double x) {
            return Math.exp(x);
        }
    },
    LOG("log") {
        @Override
        double at(double x) {
            return Math.log(x);
        }

        @Override
        double slope(double x) {
            return 1 / x;
        }
    },
    SIN("sin") {
        @Override
        double at(double x) {
            return Math.sin(x);
        }

        @Override
        double slope(double x) {
            return Math.cos(x);
        }
    },
    COS("cos") {
        @Override
        double at(double x) {
            return Math.cos(x);
        }

        @Override
        double slope(double x) {
            return -Math.sin(x);
        }
    },
    TAN("tan") {
        @Override
        double at(double x) {
            return Math.tan(x);
        }

        @Override
        double slope(double x) {
            double tan = Math.tan(x);
            return 1 + tan * tan;
        }
    },
    ABS("abs") {
        @Override
        double at(double x) {
            return Math.abs(x);
        }

        @Override
        double slope(double x) {
            return Math.signum(x);
        }
    };

    final String word;

    Function(String word) {
        this.word = word;
    }

    abstract double at(double x);

    abstract double slope(double x);
}
