package hornwright.desk.csv;

import java.util.ArrayList;
import java.util.List;

/** Cuts a text into rows and cells. Source: RFC 4180. */
final class CsvCells {
    private static final int MOST_ROWS = 20_000;
    private static final int MOST_COLUMNS = 100;

    private final String text;
    private final char separator;
    private final List<CsvTable.Row> rows = new ArrayList<>();
    private List<String> cells = new ArrayList<>();
    private int at;
    private int line = 1;
    private int began = 1;

    CsvCells(String text, char separator) {
        this.text = text;
        this.separator = separator;
    }

    List<CsvTable.Row> rows() {
        while (at < text.length()) {
            cell(text.charAt(at) == '"' ? quoted() : plain());
        }
        if (!cells.isEmpty()) {
            endRow();
        }
        return rows;
    }

    /** Takes a cell and what follows it: a separator, the end of a line or of the text. */
    private void cell(String content) {
        cells.add(CsvTable.unguarded(content));
        if (cells.size() > MOST_COLUMNS) {
            throw new CsvTable.Broken(line, "a row has more than %d cells".formatted(MOST_COLUMNS));
        }
        if (at == text.length()) {
            endRow();
        } else if (text.charAt(at) == separator) {
            at++;
            if (at == text.length()) {
                cells.add("");
            }
        } else {
            newLine();
            endRow();
        }
    }

    private void endRow() {
        if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
            rows.add(new CsvTable.Row(began, cells));
        }
        if (rows.size() > MOST_ROWS) {
            throw new CsvTable.Broken(
                    line, "the table has more than %,d rows; bring it in by parts".formatted(MOST_ROWS));
        }
        cells = new ArrayList<>();
        began = line;
    }

    private String plain() {
        int from = at;
        while (at < text.length() && text.charAt(at) != separator && !isEnd(text.charAt(at))) {
            at++;
        }
        return text.substring(from, at).strip();
    }

    private String quoted() {
        StringBuilder content = new StringBuilder();
        int opened = line;
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c != '"') {
                line += c == '\n' ? 1 : 0;
                content.append(c);
            } else if (at < text.length() && text.charAt(at) == '"') {
                content.append('"');
                at++;
            } else {
                requireEnd();
                return content.toString();
            }
        }
        throw new CsvTable.Broken(opened, "a quotation mark is opened and never closed");
    }

    private void requireEnd() {
        if (at < text.length() && text.charAt(at) != separator && !isEnd(text.charAt(at))) {
            throw new CsvTable.Broken(line, "text follows a closing quotation mark; a quote inside is written twice");
        }
    }

    private void newLine() {
        at += text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n' ? 2 : 1;
        line++;
    }

    private static boolean isEnd(char c) {
        return c == '\n' || c == '\r';
    }
}
