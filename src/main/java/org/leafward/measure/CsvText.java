package org.leafward.measure;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * Tables as text. Tables of programs are read and written as RFC 4180 says; what people
 * typed is read as far as it can be, so that no line of it is lost.
 */
public final class CsvText {

	private static final CSVFormat FORMAT = CSVFormat.RFC4180;

	/**
	 * Cells that a spreadsheet would take for a formula begin so (OWASP ASVS 5.0.0,
	 * 1.2.10).
	 */
	private static final String FORMULA = "=+-@\t\r";

	private CsvText() {
	}

	/**
	 * A text for a cell: what a spreadsheet would run as a formula begins with an
	 * apostrophe, and so does what begins with one itself.
	 * @param text any text
	 * @return to be read back by {@link #plain}
	 */
	public static String safe(String text) {
		return isMarked(text, 0) ? "'" + text : text;
	}

	/**
	 * The text of a cell that {@link #safe} made.
	 * @param cell the cell
	 * @return without the apostrophe
	 */
	public static String plain(String cell) {
		return (cell.startsWith("'") && isMarked(cell, 1)) ? cell.substring(1) : cell;
	}

	private static boolean isMarked(String text, int at) {
		return text.length() > at && (FORMULA.indexOf(text.charAt(at)) >= 0 || text.charAt(at) == '\'');
	}

	/**
	 * A row of a table.
	 *
	 * @param line number of its first line, from 1
	 * @param written as it was written, with line breaks when a cell has some
	 * @param cells its cells, without the quotes around them
	 * @param open whether a quote was opened and not closed; it is then part of its cell,
	 * and the row ends with its line
	 */
	public record Row(int line, String written, List<String> cells, boolean open) {

		public Row {
			cells = List.copyOf(cells);
		}

	}

	/**
	 * Writes a table: commas, CRLF, double quotes where they are needed (RFC 4180).
	 * @param rows the rows, the header first
	 * @return the text
	 */
	public static String write(List<List<String>> rows) {
		StringBuilder text = new StringBuilder();
		try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
			for (List<String> row : rows) {
				printer.printRecord(row);
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
		return text.toString();
	}

	/**
	 * Reads a table that a program wrote (RFC 4180); a byte order mark is passed over.
	 * @param text the text
	 * @param most most rows that are wanted, the header included
	 * @return its rows, at most one more than that
	 * @throws BadInput when it is no such table
	 */
	public static List<List<String>> read(String text, int most) {
		List<List<String>> rows = new ArrayList<>();
		try (CSVParser parser = parser(withoutMark(text), FORMAT)) {
			for (CSVRecord record : parser) {
				rows.add(record.toList());
				if (rows.size() > most) {
					break;
				}
			}
		}
		catch (UncheckedIOException | IOException ex) {
			throw new BadInput("that is no table", "row " + (rows.size() + 1),
					"write it with commas and double quotes as RFC 4180 says");
		}
		return rows;
	}

	/**
	 * Reads what people typed, copied or saved. Cells may have blanks around them and
	 * quotes inside, and lines may end in any way. A quote that begins a cell and isn't
	 * closed at the end of a cell is a letter like others.
	 * @param text the text
	 * @param separator what stands between cells, such as a tab
	 * @return a row for each line, also for empty ones; one for several lines where a
	 * cell in quotes has line breaks
	 */
	public static List<Row> typed(String text, char separator) {
		// The library marks "none" by the first of the two, which is no character.
		String sound = withoutMark(text).replace('\ufffe', '\ufffd').replace('\uffff', '\ufffd');
		String[] lines = sound.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1);
		int[] starts = new int[lines.length + 1];
		for (int i = 0; i < lines.length; i++) {
			starts[i + 1] = starts[i] + lines[i].length() + 1;
		}
		String whole = String.join("\n", lines) + "\n";
		CSVFormat quoted = FORMAT.builder().setDelimiter(separator).setIgnoreSurroundingSpaces(true).get();
		CSVFormat plain = quoted.builder().setQuote(null).get();
		List<Row> rows = new ArrayList<>();
		int at = 0;
		while (at < lines.length) {
			at = readOn(whole, lines, starts, at, quoted, rows);
			if (at < lines.length) {
				rows.add(new Row(at + 1, lines[at], cells(lines[at], plain), odd(lines[at])));
				at++;
			}
		}
		return rows;
	}

	/** Reads up to a row that can't be read, whose line it gives, or to the end. */
	private static int readOn(String whole, String[] lines, int[] starts, int from, CSVFormat format, List<Row> rows) {
		int at = from;
		try (CSVParser parser = parser(whole.substring(starts[from]), format)) {
			for (CSVRecord record : parser) {
				int next = Math.min(lines.length, from + (int) parser.getCurrentLineNumber());
				String written = whole.substring(starts[at], Math.max(starts[at], starts[next] - 1));
				rows.add(new Row(at + 1, written, record.toList(), false));
				at = next;
			}
			return lines.length;
		}
		catch (UncheckedIOException | IOException ex) {
			return at;
		}
	}

	private static List<String> cells(String line, CSVFormat format) {
		try (CSVParser parser = parser(line, format)) {
			return parser.getRecords().stream().flatMap((record) -> record.toList().stream()).toList();
		}
		catch (UncheckedIOException | IOException ex) {
			return List.of(line.strip());
		}
	}

	private static boolean odd(String line) {
		return line.chars().filter((letter) -> letter == '"').count() % 2 == 1;
	}

	private static CSVParser parser(String text, CSVFormat format) throws IOException {
		return CSVParser.builder().setReader(new StringReader(text)).setFormat(format).get();
	}

	private static String withoutMark(String text) {
		return text.startsWith("\ufeff") ? text.substring(1) : text;
	}

}
