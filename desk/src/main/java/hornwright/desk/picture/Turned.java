package hornwright.desk.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;

/** A picture set upright on a fresh sheet in plain sRGB. Source of the eight turns: JEITA CP-3451, tag 274. */
final class Turned {
    private Turned() {}

    /** Turned and, when a side is longer than that, made smaller in one go. */
    static BufferedImage upright(BufferedImage picture, int turn, int longest) {
        int w = picture.getWidth();
        int h = picture.getHeight();
        double scale = Math.min(1, longest / (double) Math.max(w, h));
        AffineTransform way = AffineTransform.getScaleInstance(scale, scale);
        way.concatenate(way(turn, w, h));
        int across = Math.max(1, (int) Math.round(w * scale));
        int down = Math.max(1, (int) Math.round(h * scale));
        return turn >= 5 ? painted(picture, way, down, across) : painted(picture, way, across, down);
    }

    /** No side longer than that; a smaller picture stays as it is. Halved step by step, so that fine lines do not break. */
    static BufferedImage within(BufferedImage picture, int longest) {
        BufferedImage now = picture;
        while (Math.max(now.getWidth(), now.getHeight()) > longest) {
            double scale = Math.max(0.5, longest / (double) Math.max(now.getWidth(), now.getHeight()));
            now = painted(
                    now,
                    AffineTransform.getScaleInstance(scale, scale),
                    Math.max(1, (int) Math.round(now.getWidth() * scale)),
                    Math.max(1, (int) Math.round(now.getHeight() * scale)));
        }
        return now;
    }

    private static BufferedImage painted(BufferedImage picture, AffineTransform way, int width, int height) {
        BufferedImage sheet = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D pen = sheet.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.drawImage(picture, way, null);
        pen.dispose();
        return sheet;
    }

    /** From the stored picture, {@code w} by {@code h}, to the upright one. */
    private static AffineTransform way(int turn, int w, int h) {
        return switch (turn) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> new AffineTransform();
        };
    }
}
