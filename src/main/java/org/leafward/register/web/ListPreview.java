package org.leafward.register.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWords;
import org.leafward.pages.Choice;
import org.leafward.plants.Catalogue;
import org.leafward.plants.NameLookup;
import org.leafward.plants.Species;
import org.leafward.register.Beds;
import org.leafward.register.NewBed;
import org.leafward.register.NewPlanting;
import org.leafward.register.Placement;
import org.leafward.register.core.list.DayOrder;
import org.leafward.register.core.list.ListLine;
import org.leafward.register.core.list.PlantList;
import org.leafward.register.core.list.PlantedDay;

/**
 * What would be added of a list: each line as it was read, with what was changed in the
 * form laid over it. Fields of a line are called by what they hold and its number, such
 * as {@code count-7}.
 */
final class ListPreview {

	/** What is unknown is compared with everything, which takes long. */
	private static final int MOST_SUGGESTED = 100;

	private static final int LONGEST = 300;

	private final Catalogue catalogue;

	private final Map<String, String> given;

	private final LocalDate today;

	private final DayOrder order;

	private final @Nullable PlantedDay usual;

	private final Map<String, NameLookup> looked = new HashMap<>();

	private final List<Row> rows = new ArrayList<>();

	private final List<Ready> ready = new ArrayList<>();

	private final Set<String> beds;

	private int suggested;

	private boolean undecided;

	/**
	 * A planting that can be added.
	 *
	 * @param planting the planting
	 * @param bed name of its bed; empty for none
	 */
	record Ready(NewPlanting planting, String bed) {
	}

	/**
	 * A line as the page shows it.
	 *
	 * @param line number of the line
	 * @param written as it was written
	 * @param left whether it is left out
	 * @param name name of the plant
	 * @param species what it can be, to choose from; empty when there is nothing to
	 * choose
	 * @param chosen the one that was chosen, or ""
	 * @param found the plant in words; "" as long as it isn't sure
	 * @param count number of plants
	 * @param label what its people call it
	 * @param planted when it was planted
	 * @param placement ground or container
	 * @param area area of the bed
	 * @param bed name of the bed in which it stands
	 * @param errors what can't be used, by the id of the field
	 * @param remarks how it was understood where it isn't plain
	 */
	record Row(int line, String written, boolean left, String name, List<Choice> species, String chosen, String found,
			String count, String label, String planted, String placement, String area, String bed,
			Map<String, String> errors, List<String> remarks) {

		/** Whether it keeps the list from being added. */
		public boolean open() {
			return !this.left && !this.errors.isEmpty();
		}

	}

	/**
	 * Lays a form over a list.
	 * @param list the list
	 * @param given the fields of the form; without them everything is as it was read
	 * @param catalogue the species
	 * @param beds names of the beds that are there
	 * @param today the day of the site
	 * @param order what comes first in 3/4/2021
	 * @param usual when plants were planted of which no line tells; null when nobody said
	 */
	ListPreview(PlantList list, Map<String, String> given, Catalogue catalogue, Collection<String> beds,
			LocalDate today, DayOrder order, @Nullable PlantedDay usual) {
		this.given = given;
		this.catalogue = catalogue;
		this.beds = beds.stream().map(Beds::key).collect(Collectors.toSet());
		this.today = today;
		this.order = order;
		this.usual = usual;
		list.lines().forEach(this::add);
	}

	List<Row> rows() {
		return this.rows;
	}

	/** What can be added now, without what is left out. */
	List<Ready> ready() {
		return this.ready;
	}

	long left() {
		return this.rows.stream().filter(Row::left).count();
	}

	/** Whether the order of day and month has to be asked for. */
	boolean undecided() {
		return this.undecided;
	}

	/**
	 * The first thing that is wrong with each line, by the id of its field. What is wrong
	 * with several alike is told once, by the field of the first.
	 */
	Map<String, String> open() {
		Map<String, List<Row>> alike = new LinkedHashMap<>();
		this.rows.stream()
			.filter(Row::open)
			.forEach((row) -> alike.computeIfAbsent(first(row).getValue(), (words) -> new ArrayList<>()).add(row));
		Map<String, String> open = new LinkedHashMap<>();
		alike.forEach((words, some) -> open.put(first(some.get(0)).getKey(),
				((some.size() == 1) ? "Line " : "Lines ") + lines(some) + ": " + words));
		return open;
	}

	private static Map.Entry<String, String> first(Row row) {
		return row.errors().entrySet().iterator().next();
	}

	/** As in 1, 6–12. */
	private static String lines(List<Row> rows) {
		List<String> parts = new ArrayList<>();
		for (int from = 0, to = 0; from < rows.size(); from = to + 1, to = from) {
			while (to + 1 < rows.size() && rows.get(to + 1).line() == rows.get(to).line() + 1) {
				to++;
			}
			parts.add((from == to) ? String.valueOf(rows.get(from).line())
					: rows.get(from).line() + "–" + rows.get(to).line());
		}
		return String.join(", ", parts);
	}

	private void add(ListLine line) {
		int number = line.number();
		boolean left = this.given.containsKey("leave-" + number);
		Map<String, String> errors = new LinkedHashMap<>();
		List<String> remarks = new ArrayList<>(line.remarks());
		String name = field("name", number, line.name());
		NameLookup found = look(name);
		List<Species> offered = found.fitting().isEmpty() ? found.near() : found.fitting();
		String wanted = field("species", number, "");
		Optional<Species> species = found.sure() ? offered.stream().findFirst()
				: offered.stream().filter((one) -> one.id().value().equals(wanted)).findFirst();
		if (species.isEmpty()) {
			errors.put((offered.isEmpty() ? "name-" : "species-") + number, whichPlant(name, found));
		}
		String planted = field("planted", number, line.planted());
		LocalDate day = day(planted, "planted-" + number, errors, remarks);
		String usualRoots = SiteAnswer.word((line.placement() != null) ? line.placement() : Placement.GROUND);
		PlantingRequest request = new PlantingRequest(species.map((one) -> one.id().value()).orElse("unknown"),
				field("label", number, line.label()), SiteRequest.or(field("count", number, line.count()), "1"),
				((day != null) ? day : this.today).toString(), field("placement", number, usualRoots), false, false,
				field("area", number, line.area()), null, null, null, null, null, null);
		String bed = bed(field("bed", number, line.bed()), "bed-" + number, left, errors, remarks);
		try {
			NewPlanting planting = request.toPlanting();
			if (errors.isEmpty() && !left) {
				this.ready.add(new Ready(planting, bed));
			}
		}
		catch (BadInput ex) {
			ex.byField()
				.forEach((field, words) -> errors
					.putIfAbsent((field.equals("plantedOn") ? "planted" : field) + "-" + number, words));
		}
		List<Choice> choices = found.sure() ? List.of()
				: offered.stream().map((one) -> new Choice(one.id().value(), words(one))).toList();
		this.rows
			.add(new Row(number, line.written(), left, name, choices, species.map((one) -> one.id().value()).orElse(""),
					species.map(ListPreview::words).orElse(""), String.valueOf(request.count()),
					String.valueOf(request.label()), planted, String.valueOf(request.placement()),
					String.valueOf(request.area()), bed, left ? Map.of() : errors, remarks));
	}

	/** A bed that isn't there yet is made with the plantings, and that is said before. */
	private String bed(String name, String id, boolean left, Map<String, String> errors, List<String> remarks) {
		if (name.isEmpty()) {
			return "";
		}
		try {
			String clean = NewBed.named(name).name();
			if (!left && !this.beds.contains(Beds.key(clean))) {
				remarks
					.add("There is no bed “%s” yet: it is made. Write another, or nothing, for none.".formatted(clean));
			}
			return clean;
		}
		catch (BadInput ex) {
			errors.put(id, "the name of the bed: " + ex.byField().values().iterator().next());
			return name;
		}
	}

	private static String words(Species species) {
		return species.commonName() + ", " + species.botanicalName();
	}

	private String field(String name, int line, String read) {
		String value = this.given.getOrDefault(name + "-" + line, read).strip();
		return value.substring(0, Math.min(value.length(), LONGEST));
	}

	private NameLookup look(String name) {
		if (NameLookup.fold(name).isEmpty()) {
			return new NameLookup(List.of(), List.of());
		}
		return this.looked.computeIfAbsent(NameLookup.fold(name), (key) -> {
			NameLookup exact = NameLookup.withoutNear(this.catalogue, name);
			if (!exact.fitting().isEmpty() || this.suggested >= MOST_SUGGESTED) {
				return exact;
			}
			this.suggested++;
			return NameLookup.of(this.catalogue, name);
		});
	}

	private static String whichPlant(String name, NameLookup found) {
		if (name.isBlank()) {
			return "no plant is named: write its name.";
		}
		if (!found.fitting().isEmpty()) {
			return "“%s” can be several plants: choose yours.".formatted(name);
		}
		return found.near().isEmpty()
				? "“%s” is not in our catalogue: write another name for it, or leave the line out.".formatted(name)
				: "“%s” is not in our catalogue: choose what is meant, or write another name.".formatted(name);
	}

	private @Nullable LocalDate day(String text, String id, Map<String, String> errors, List<String> remarks) {
		if (text.isBlank()) {
			if (this.usual == null) {
				errors.put(id, "the day of planting is missing: write a date, or the year alone.");
				return null;
			}
			remarks.add("No date stands on this line: %s is taken.".formatted(DayWords.of(this.usual.day())));
			return this.usual.day();
		}
		Optional<PlantedDay> read = PlantedDay.read(text, this.order, this.today);
		if (read.isEmpty()) {
			errors.put(id,
					"“%s” can’t be read as a date: write it like 2019-05-01, May 2019, or 2019.".formatted(text));
			return null;
		}
		LocalDate day = read.get().day();
		LocalDate other = read.get().other();
		switch (read.get().taken()) {
			case EITHER -> {
				this.undecided = true;
				errors.put(id,
						"“%s” is %s or %s: say above whether the month or the day comes first, or write it like %s."
							.formatted(text, DayWords.of(day), DayWords.of((other != null) ? other : day), day));
				return null;
			}
			case YEAR -> remarks.add("Only the year is told: %s is taken.".formatted(DayWords.of(day)));
			case MONTH -> remarks.add("Only month and year are told: %s is taken.".formatted(DayWords.of(day)));
			case SHORT_YEAR -> remarks.add("The year has two digits: %s is taken.".formatted(DayWords.of(day)));
			case WHOLE -> {
				if (!text.equals(day.toString())) {
					remarks.add("The date is taken as %s.".formatted(DayWords.of(day)));
				}
			}
		}
		return day;
	}

}
