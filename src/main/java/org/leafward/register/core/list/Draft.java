package org.leafward.register.core.list;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.CsvText;
import org.leafward.register.Placement;

/** A line while it is read. What finds no place in a field is told in a remark. */
final class Draft {

	/** Any day: what counts here is only whether something is a date. */
	private static final LocalDate ANY = LocalDate.of(2000, 1, 1);

	/** Words of a date behind a name are looked for in the last few only. */
	private static final int LAST_WORDS = 8;

	private static final Pattern ROOTS_BEHIND = Pattern.compile(
			"(.*?\\p{L}.*?)[\\s,]+\\(?((?:in|en)\\s(?:an?\\s|the\\s|una?\\s|el\\s|la\\s)?(?:pots?|containers?|tub|planter|ground|macetas?|contenedor|suelo|tierra))\\)?",
			Pattern.CASE_INSENSITIVE);

	private static final int LONGEST_LABEL = 100;

	private final CsvText.Row row;

	private final List<String> remarks = new ArrayList<>();

	private final List<String> labels = new ArrayList<>();

	private String name = "";

	private String count = "";

	private String planted = "";

	private String area = "";

	private String bed = "";

	private @Nullable Placement placement;

	Draft(CsvText.Row row) {
		this.row = row;
		if (row.open()) {
			this.remarks.add("A quotation mark on this line is opened and not closed; it was taken for a letter.");
		}
	}

	/** Its cells, as many and as long as are read. */
	List<String> cells() {
		List<String> cells = this.row.cells().stream().map(PlantList::clean).toList();
		if (cells.stream().skip(PlantList.MOST_CELLS).anyMatch((cell) -> !cell.isEmpty())) {
			this.remarks.add(
					"This line has %,d columns; the first %d were read.".formatted(cells.size(), PlantList.MOST_CELLS));
		}
		List<String> read = new ArrayList<>();
		for (String cell : cells.subList(0, Math.min(cells.size(), PlantList.MOST_CELLS))) {
			if (cell.length() > PlantList.LONGEST_CELL) {
				this.remarks.add("A text on this line has %,d characters; the first %d were read."
					.formatted(cell.length(), PlantList.LONGEST_CELL));
			}
			read.add(cell.substring(0, Math.min(cell.length(), PlantList.LONGEST_CELL)));
		}
		return read;
	}

	void leaveOut(String cell) {
		this.remarks.add("Not taken over: “%s”.".formatted(cell));
	}

	void name(String cell) {
		if (this.name.isEmpty()) {
			this.name = cell;
		}
		else {
			this.labels.add(cell);
		}
	}

	void count(String cell) {
		if (this.count.isEmpty()) {
			this.count = cell;
		}
		else {
			leaveOut(cell);
		}
	}

	void planted(String cell) {
		if (this.planted.isEmpty()) {
			this.planted = cell;
		}
		else {
			leaveOut(cell);
		}
	}

	void area(String cell) {
		this.area = cell;
	}

	/** Some write "pot" below a bed. */
	void bed(String cell) {
		Optional<Placement> read = Roots.read(cell);
		if (read.isPresent() && this.placement == null) {
			roots(cell, read);
		}
		else {
			this.bed = cell;
		}
	}

	void label(String cell) {
		this.labels.add(cell);
	}

	void roots(String cell, Optional<Placement> read) {
		if (read.isEmpty() || (this.placement != null && this.placement != read.get())) {
			leaveOut(cell);
			return;
		}
		this.placement = read.get();
		if (Roots.sized(cell)) {
			this.remarks
				.add("The size of the pot, “%s”, is not taken over: give it later with the planting.".formatted(cell));
		}
	}

	void rootsOrLabel(String cell) {
		Optional<Placement> read = Roots.read(cell);
		if (read.isPresent() && this.placement == null) {
			roots(cell, read);
		}
		else {
			label(cell);
		}
	}

	/**
	 * Takes a cell for a number, a date or where roots are, if it looks so and none was
	 * found yet.
	 */
	boolean takes(String cell) {
		Optional<String> number = Quantity.alone(cell);
		if (this.planted.isEmpty() && (isDate(cell) && (number.isEmpty() || PlantedDay.isYear(cell)))) {
			this.planted = cell;
			return true;
		}
		if (this.count.isEmpty() && number.isPresent()) {
			this.count = number.get();
			return true;
		}
		Optional<Placement> roots = Roots.read(cell);
		if (this.placement == null && roots.isPresent()) {
			roots(cell, roots);
			return true;
		}
		return false;
	}

	private static boolean isDate(String cell) {
		return PlantedDay.read(cell, DayOrder.UNKNOWN, ANY).isPresent();
	}

	ListLine guessed(List<String> texts, Predicate<String> isName) {
		int plant = 0;
		for (int i = 0; texts.size() > 1 && i < texts.size(); i++) {
			if (isName.test(alone(texts.get(i)))) {
				plant = i;
				break;
			}
		}
		for (int i = 0; i < texts.size(); i++) {
			if (i == plant) {
				this.name = texts.get(i);
			}
			else {
				this.labels.add(texts.get(i));
			}
		}
		return done("");
	}

	private static String alone(String text) {
		return Quantity.beside(text).map(Quantity::rest).orElse(text);
	}

	ListLine inColumns(String botanical, String variety, Predicate<String> isName) {
		if (!botanical.isEmpty() && (this.name.isEmpty() || isName.test(botanical) || !isName.test(alone(this.name)))) {
			String common = this.name;
			this.name = botanical;
			if (!common.isEmpty() && this.labels.isEmpty()) {
				this.labels.add(common);
			}
		}
		return done(variety);
	}

	private ListLine done(String variety) {
		takeApart();
		String called = String.join(", ", this.labels);
		if (called.isEmpty()) {
			String usual = (this.name + " " + variety).strip();
			called = usual.substring(0, Math.min(usual.length(), LONGEST_LABEL));
		}
		else if (!variety.isEmpty()) {
			called = called + ", " + variety;
		}
		return new ListLine(this.row.line(), this.row.written(), this.name, this.count, called, this.planted,
				this.placement, this.area, this.bed, this.remarks);
	}

	/** What stands beside the name in one cell: 12 boxwood in pots, 2019. */
	private void takeApart() {
		if (this.planted.isEmpty()) {
			takeDate(this.name.split("[\\s,]+"));
		}
		Matcher roots = ROOTS_BEHIND.matcher(this.name);
		if (this.placement == null && roots.matches()) {
			this.placement = Roots.read(roots.group(2)).orElse(null);
			this.name = (this.placement != null) ? roots.group(1).strip() : this.name;
		}
		Optional<Quantity> quantity = Quantity.beside(this.name);
		if (this.count.isEmpty() && quantity.isPresent()) {
			this.name = quantity.get().rest();
			this.count = quantity.get().count();
		}
	}

	private void takeDate(String[] words) {
		for (int i = Math.max(1, words.length - LAST_WORDS); i < words.length; i++) {
			String date = String.join(" ", List.of(words).subList(i, words.length));
			String before = String.join(" ", List.of(words).subList(0, i));
			if (isDate(date) && before.codePoints().anyMatch(Character::isLetter)) {
				this.name = before;
				this.planted = date;
				return;
			}
		}
	}

}
