package hornwright.desk.colour;

/**
 * A colour in CIELAB and its CIEDE2000 difference from another, all weights 1. Source: Sharma, Wu, Dalal, "The CIEDE2000
 * color-difference formula: implementation notes, supplementary test data, and mathematical observations" (2005).
 */
record Lab(double lightness, double a, double b) {
    private static final double POW_25_7 = Math.pow(25, 7);

    double difference(Lab other) {
        double stretch = 1.5 - 0.5 * chromaShare((Math.hypot(a, b) + Math.hypot(other.a, other.b)) / 2);
        Polar one = polar(stretch);
        Polar two = other.polar(stretch);
        double chroma = (one.chroma + two.chroma) / 2;
        double hue = one.meanHue(two);
        double mid = Math.pow((lightness + other.lightness) / 2 - 50, 2);
        double light = (other.lightness - lightness) / (1 + 0.015 * mid / Math.sqrt(20 + mid));
        double vivid = (two.chroma - one.chroma) / (1 + 0.045 * chroma);
        double turned = one.hueStep(two) / (1 + 0.015 * chroma * hueWeight(hue));
        double blue = Math.exp(-Math.pow((hue - 275) / 25, 2));
        double rotation = -2 * chromaShare(chroma) * Math.sin(Math.toRadians(60 * blue));
        return Math.sqrt(light * light + vivid * vivid + turned * turned + rotation * vivid * turned);
    }

    private static double chromaShare(double chroma) {
        double seventh = Math.pow(chroma, 7);
        return Math.sqrt(seventh / (seventh + POW_25_7));
    }

    private static double hueWeight(double hue) {
        return 1 - 0.17 * cos(hue - 30) + 0.24 * cos(2 * hue) + 0.32 * cos(3 * hue + 6) - 0.20 * cos(4 * hue - 63);
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private Polar polar(double stretch) {
        double hue = Math.toDegrees(Math.atan2(b, stretch * a));
        return new Polar(Math.hypot(stretch * a, b), hue < 0 ? hue + 360 : hue);
    }

    private record Polar(double chroma, double hue) {
        private boolean grey(Polar other) {
            return chroma * other.chroma == 0;
        }

        /** The step in hue as a length, the short way round. */
        double hueStep(Polar other) {
            double step = other.hue - hue;
            double shortest = step > 180 ? step - 360 : step < -180 ? step + 360 : step;
            return grey(other) ? 0 : 2 * Math.sqrt(chroma * other.chroma) * Math.sin(Math.toRadians(shortest / 2));
        }

        double meanHue(Polar other) {
            double sum = hue + other.hue;
            if (grey(other)) {
                return sum;
            }
            if (Math.abs(hue - other.hue) <= 180) {
                return sum / 2;
            }
            return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
        }
    }
}
