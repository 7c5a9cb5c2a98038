package hornwright.desk.paper;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Plan;

/** The papers of a planned horn, each a file of its own. */
public enum BenchPaper {
    BENCH_SHEET("bench-sheet.pdf") {
        @Override
        public byte[] of(Keywork keywork, Plan plan, SheetHead head, PaperSize size) {
            return new PlanSheets(keywork, plan, head).bench().pdf(size);
        }
    },
    LAYOUT_MAT("layout-mat.pdf") {
        @Override
        public byte[] of(Keywork keywork, Plan plan, SheetHead head, PaperSize size) {
            return new PlanSheets(keywork, plan, head).mat().pdf(size);
        }
    },
    WALL_PRINTS("wall-prints.pdf") {
        @Override
        public byte[] of(Keywork keywork, Plan plan, SheetHead head, PaperSize size) {
            return WallWords.of(keywork, plan, head).pdf(size);
        }
    },
    REPORT("report.pdf") {
        @Override
        public byte[] of(Keywork keywork, Plan plan, SheetHead head, PaperSize size) {
            return ReportWords.of(keywork, plan, head).pdf(size);
        }
    };

    private final String fileName;

    BenchPaper(String fileName) {
        this.fileName = fileName;
    }

    public String fileName() {
        return fileName;
    }

    /** The paper as a PDF. */
    public abstract byte[] of(Keywork keywork, Plan plan, SheetHead head, PaperSize size);
}
