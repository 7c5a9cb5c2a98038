package hornwright.desk.paper;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** A ruler laid on a PDF: what its paths measure on paper. */
final class DrawnCircles extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    private final List<Path2D> stroked = new ArrayList<>();
    private Path2D path = new Path2D.Double();

    private DrawnCircles(PDPage page) {
        super(page);
    }

    /** Diameters of all stroked closed curves that are as wide as high. */
    static List<Double> diametersMm(byte[] pdf) throws IOException {
        return paths(pdf).stream()
                .filter(DrawnCircles::isCurved)
                .map(Path2D::getBounds2D)
                .filter(box -> Math.abs(box.getWidth() - box.getHeight()) < 0.02)
                .map(box -> box.getWidth() * MM)
                .toList();
    }

    static double longestLineMm(byte[] pdf) throws IOException {
        return paths(pdf).stream()
                        .filter(path -> !isCurved(path))
                        .map(Path2D::getBounds2D)
                        .filter(box -> box.getHeight() < 0.02)
                        .mapToDouble(Rectangle2D::getWidth)
                        .max()
                        .orElseThrow()
                * MM;
    }

    private static List<Path2D> paths(byte[] pdf) throws IOException {
        List<Path2D> found = new ArrayList<>();
        try (var document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                DrawnCircles ruler = new DrawnCircles(page);
                ruler.processPage(page);
                found.addAll(ruler.stroked);
            }
        }
        return found;
    }

    private static boolean isCurved(Path2D path) {
        double[] points = new double[6];
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            if (i.currentSegment(points) == PathIterator.SEG_CUBICTO) {
                return true;
            }
        }
        return false;
    }

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
        path.append(new Rectangle2D.Double(a.getX(), a.getY(), c.getX() - a.getX(), c.getY() - a.getY()), false);
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int rule) {}

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float ax, float ay, float bx, float by, float x, float y) {
        path.curveTo(ax, ay, bx, by, x, y);
    }

    @Override
    public Point2D getCurrentPoint() {
        Point2D at = path.getCurrentPoint();
        return at == null ? new Point2D.Double() : at;
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path = new Path2D.Double();
    }

    @Override
    public void strokePath() {
        stroked.add(path);
        path = new Path2D.Double();
    }

    @Override
    public void fillPath(int rule) {
        path = new Path2D.Double();
    }

    @Override
    public void fillAndStrokePath(int rule) {
        strokePath();
    }

    @Override
    public void shadingFill(COSName name) {}
}
