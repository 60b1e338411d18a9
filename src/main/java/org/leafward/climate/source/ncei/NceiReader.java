package org.leafward.climate.source.ncei;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.LineProblem;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.source.CsvFields;
import org.leafward.climate.source.FetchFailed;

/**
 * Reads the CSV of data set {@code daily-summaries}: a line of column names with
 * {@code DATE}, {@code STATION}, and for each element a column of values and one of
 * attributes, then one line a day. Asked without a unit system the service gives the
 * whole numbers of GHCN-Daily (tenths of °C, tenths of mm, mm, tenths of m/s). The
 * attributes are measurement flag, quality flag and source flag between commas; a value
 * with a quality flag failed a check and is left out (GHCN-Daily readme, section III).
 */
final class NceiReader {

	private static final int MOST_PROBLEMS = 50;

	/** Stands for a missing value in GHCN-Daily. */
	private static final String MISSING = "-9999";

	private final StationId station;

	private final Map<LocalDate, Map<Element, Integer>> days = new LinkedHashMap<>();

	private final List<LineProblem> problems = new ArrayList<>();

	private long line;

	private long problemsInAll;

	private long flagged;

	private long missing;

	private NceiReader(StationId station) {
		this.station = station;
	}

	/**
	 * Reads an answer.
	 * @param text the CSV; blank when the service has nothing
	 * @param station whose days
	 * @return the days; lines that can't be used are problems
	 * @throws FetchFailed when it isn't such a CSV, or in other units
	 */
	static NceiDays read(String text, StationId station) {
		NceiReader reader = new NceiReader(station);
		Iterator<String> lines = text.lines().iterator();
		if (!text.isBlank()) {
			List<String> header = CsvFields.of(lines.next()).orElse(List.of());
			if (!header.contains("DATE")) {
				throw new FetchFailed("the answer isn't the CSV of daily summaries: no column DATE");
			}
			while (lines.hasNext()) {
				reader.row(header, lines.next());
			}
		}
		return reader.finish();
	}

	private void row(List<String> header, String text) {
		this.line++;
		if (text.isBlank()) {
			return;
		}
		Optional<List<String>> split = CsvFields.of(text);
		if (split.isEmpty() || split.get().size() != header.size()) {
			problem("the line has other fields than the column names");
			return;
		}
		List<String> fields = split.get();
		int stationAt = header.indexOf("STATION");
		if (stationAt >= 0 && !fields.get(stationAt).equals(this.station.value())) {
			problem("the line is of another station");
			return;
		}
		LocalDate day = day(fields.get(header.indexOf("DATE")));
		if (day == null) {
			problem("the line has no date that can be kept");
			return;
		}
		Map<Element, Integer> values = new EnumMap<>(Element.class);
		for (Element element : Element.values()) {
			int at = header.indexOf(element.name());
			if (at >= 0) {
				int attributesAt = header.indexOf(element.name() + "_ATTRIBUTES");
				value(values, element, fields.get(at), (attributesAt >= 0) ? fields.get(attributesAt) : "", day);
			}
		}
		if (!values.isEmpty() && this.days.put(day, values) != null) {
			problem("%s is given twice; the later line is taken".formatted(day));
		}
	}

	private static @Nullable LocalDate day(String text) {
		try {
			LocalDate day = LocalDate.parse(text);
			return (day.getYear() >= DailyRecord.FIRST_YEAR && day.getYear() <= DailyRecord.LAST_YEAR) ? day : null;
		}
		catch (DateTimeException ex) {
			return null;
		}
	}

	private void value(Map<Element, Integer> values, Element element, String text, String attributes, LocalDate day) {
		if (text.isEmpty() || text.equals(MISSING)) {
			this.missing++;
			return;
		}
		if (text.indexOf('.') >= 0) {
			// Whole numbers are tenths; decimals would be °F and inches, or °C and mm.
			throw new FetchFailed(
					"the answer gives %s as '%s', in other units than asked for".formatted(element, text));
		}
		if (!text.matches("[+-]?\\d{1,6}")) {
			problem("%s on %s is no number".formatted(element, day));
			return;
		}
		String[] flags = attributes.split(",", -1);
		if (flags.length > 1 && !flags[1].isBlank()) {
			this.flagged++;
			return;
		}
		int value = Integer.parseInt(text);
		if (!element.plausible(value)) {
			problem("%s on %s is %d, outside %d to %d".formatted(element, day, value, element.lowest(),
					element.highest()));
			return;
		}
		values.put(element, value);
	}

	private void problem(String what) {
		this.problemsInAll++;
		if (this.problems.size() < MOST_PROBLEMS) {
			// The column names are line 1.
			this.problems.add(new LineProblem(this.line + 1, what, "nothing; it is left out"));
		}
	}

	private NceiDays finish() {
		List<ObservedDay> observed = new ArrayList<>();
		this.days.forEach(
				(day, values) -> observed.add(new ObservedDay(day, values.get(Element.TMIN), values.get(Element.TMAX),
						values.get(Element.PRCP), values.get(Element.SNWD), values.get(Element.AWND))));
		return new NceiDays(observed, this.line, this.flagged, this.missing, List.copyOf(this.problems),
				this.problemsInAll);
	}

}
