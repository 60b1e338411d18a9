package org.leafward.register.core.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.leafward.measure.BadInput;
import org.leafward.measure.CsvText;

/**
 * A list of plantings, a line for each. Columns with a header are read by its words;
 * without one each cell is taken for what it looks like.
 *
 * @param lines its plantings in their order
 * @param header whether its first line names its columns
 * @param unused columns that mean nothing here, as they are called
 */
public record PlantList(List<ListLine> lines, boolean header, List<String> unused) {

	/**
	 * Lines that are read at a time, without empty ones; the page that shows them stays
	 * below 60 kB, packed.
	 */
	public static final int MOST_LINES = 400;

	/** Characters that are read at a time. */
	public static final int LONGEST = 60_000;

	/** Cells of a line that are read. */
	static final int MOST_CELLS = 40;

	/** Characters of a cell that are read. */
	static final int LONGEST_CELL = 300;

	private static final Pattern SAYS_NOTHING = Pattern.compile("[,;\\s\u00a0]*");

	public PlantList {
		lines = List.copyOf(lines);
		unused = List.copyOf(unused);
	}

	/**
	 * Reads a list.
	 * @param given what was typed, copied or saved: cells with tabs, semicolons or commas
	 * between (RFC 4180 for those in quotes)
	 * @param isName whether a text is surely the name of a plant; asked for lines with
	 * several texts and no header
	 * @return what stands in it; a line with nothing but separators is passed over
	 * @throws BadInput when it is empty, or too long
	 */
	public static PlantList read(String given, Predicate<String> isName) {
		// Forms send two characters for a line break.
		String text = given.replace("\r\n", "\n");
		if (text.length() > LONGEST) {
			throw new BadInput("the list has %,d characters".formatted(text.length()), "text",
					"add up to %,d at a time".formatted(LONGEST));
		}
		long count = text.lines().filter((line) -> !line.isBlank()).count();
		if (count > MOST_LINES + 1) {
			throw new BadInput("the list has %,d lines".formatted(count), "text",
					"add up to %d at a time".formatted(MOST_LINES));
		}
		List<CsvText.Row> rows = CsvText.typed(text, separator(text))
			.stream()
			.filter((row) -> row.cells().stream().anyMatch((cell) -> !SAYS_NOTHING.matcher(cell).matches()))
			.toList();
		if (rows.isEmpty()) {
			throw new BadInput("the list is empty", "text", "write one plant on each line, or choose a file");
		}
		List<Optional<Column>> columns = header(rows.get(0));
		if (columns.isEmpty() && rows.size() > MOST_LINES) {
			throw new BadInput("the list has %,d lines".formatted(rows.size()), "text",
					"add up to %d at a time".formatted(MOST_LINES));
		}
		if (columns.isEmpty()) {
			return new PlantList(rows.stream().map((row) -> guessed(row, isName)).toList(), false, List.of());
		}
		if (rows.size() == 1) {
			throw new BadInput("there is nothing below the names of the columns", "text",
					"write one plant on each line");
		}
		List<String> names = rows.get(0).cells().stream().map(PlantList::clean).toList();
		List<String> unused = new ArrayList<>();
		for (int i = 0; i < names.size(); i++) {
			if (columns.get(i).isEmpty() && !names.get(i).isEmpty()) {
				unused.add(names.get(i));
			}
		}
		return new PlantList(
				rows.subList(1, rows.size()).stream().map((row) -> inColumns(row, columns, names, isName)).toList(),
				true, unused);
	}

	/** A header is half of known words at least, one of them that of the plant. */
	private static List<Optional<Column>> header(CsvText.Row row) {
		List<Optional<Column>> columns = row.cells().stream().map((cell) -> Column.of(clean(cell))).toList();
		long written = row.cells().stream().filter((cell) -> !clean(cell).isEmpty()).count();
		long known = columns.stream().filter(Optional::isPresent).count();
		boolean plant = columns.contains(Optional.of(Column.PLANT)) || columns.contains(Optional.of(Column.BOTANICAL));
		return (plant && known * 2 >= written) ? columns : List.of();
	}

	private static char separator(String text) {
		List<String> lines = text.lines().filter((line) -> !line.isBlank()).toList();
		for (char one : new char[] { '\t', ';' }) {
			long having = lines.stream().filter((line) -> line.indexOf(one) >= 0).count();
			if (having > 0 && (having * 2 >= lines.size() || text.indexOf(',') < 0)) {
				return one;
			}
		}
		return ',';
	}

	private static ListLine inColumns(CsvText.Row row, List<Optional<Column>> columns, List<String> names,
			Predicate<String> isName) {
		Draft draft = new Draft(row);
		String botanical = "";
		String variety = "";
		List<String> cells = draft.cells();
		for (int i = 0; i < cells.size(); i++) {
			String cell = cells.get(i);
			if (cell.isEmpty()) {
				continue;
			}
			if (i >= columns.size()) {
				draft.leaveOut(cell);
				continue;
			}
			Column column = columns.get(i).orElse(null);
			if (column == null) {
				continue;
			}
			switch (column) {
				case PLANT -> draft.name(cell);
				case BOTANICAL -> botanical = cell;
				case VARIETY -> variety = cell;
				case COUNT -> draft.count(Quantity.alone(cell).orElse(cell));
				case LABEL -> draft.label(cell);
				case BED -> draft.bed(cell);
				case LOCATION -> draft.rootsOrLabel(cell);
				case PLANTED -> draft.planted(cell);
				case PLACEMENT -> draft.roots(cell, Roots.read(cell));
				case IN_POT -> draft.roots(cell, Roots.inPot(cell));
				case IN_GROUND -> draft.roots(cell, Roots.inGround(cell));
				case AREA -> draft.area(cell + (cell.matches("[\\d.,]+") ? Column.unit(names.get(i)) : ""));
			}
		}
		return draft.inColumns(botanical, variety, isName);
	}

	private static ListLine guessed(CsvText.Row row, Predicate<String> isName) {
		Draft draft = new Draft(row);
		List<String> texts = new ArrayList<>();
		for (String cell : withYears(draft.cells())) {
			if (!cell.isEmpty() && !draft.takes(cell)) {
				texts.add(cell);
			}
		}
		return draft.guessed(texts, isName);
	}

	/** "May 1, 2019" is one date, though it has a comma. */
	private static List<String> withYears(List<String> cells) {
		List<String> joined = new ArrayList<>();
		for (int i = 0; i < cells.size(); i++) {
			boolean split = i + 1 < cells.size() && PlantedDay.lacksItsYear(cells.get(i))
					&& PlantedDay.isYear(cells.get(i + 1));
			joined.add(split ? cells.get(i) + ", " + cells.get(++i) : cells.get(i));
		}
		return joined;
	}

	/** Without blanks around it, those that don't break among them. */
	static String clean(String cell) {
		return cell.replace('\u00a0', ' ').strip();
	}

}
