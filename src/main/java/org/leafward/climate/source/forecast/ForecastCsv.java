package org.leafward.climate.source.forecast;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.source.CsvFields;
import org.leafward.measure.BadInput;

/**
 * A forecast as plain CSV, in UTF-8:
 *
 * <pre>
 * # issued: 2026-11-25T06:00:00Z
 * date,min_c,max_c,precip_mm,wind_ms,min_rh_percent
 * 2026-11-25,-2.5,6.0,0.4,3.1,55
 * </pre>
 *
 * The first line is optional (without it the time of reading counts), as are other lines
 * that begin with #. The columns may stand in any order; {@code date} and one more are
 * needed; {@code snow_mm} (depth of new snow) may be added. A value that isn't known is
 * left empty. Temperatures in °C, precipitation in mm, wind in m/s as mean of the day,
 * lowest relative humidity in percent.
 *
 * @param issuedAt when the forecast was made, null when the text doesn't say
 * @param days in the order of the text
 */
public record ForecastCsv(@Nullable Instant issuedAt, List<ForecastDay> days) {

	private static final Set<String> COLUMNS = Set.of("date", "min_c", "max_c", "precip_mm", "wind_ms",
			"min_rh_percent", "snow_mm");

	private static final String SHAPE = "date,min_c,max_c,precip_mm,wind_ms,min_rh_percent";

	/** Whoever sends more lines than this sends something else. */
	private static final int MOST_LINES = 400;

	public ForecastCsv {
		days = List.copyOf(days);
	}

	/**
	 * Reads the text.
	 * @param text the CSV
	 * @return what stands in it
	 * @throws BadInput when a line can't be used
	 */
	public static ForecastCsv read(String text) {
		List<String> lines = text.lines().limit(MOST_LINES + 1).toList();
		if (lines.size() > MOST_LINES) {
			throw new BadInput("there are more than %d lines".formatted(MOST_LINES), "csv", "give one line a day");
		}
		Instant issued = null;
		List<String> header = List.of();
		List<ForecastDay> days = new ArrayList<>();
		for (int number = 1; number <= lines.size(); number++) {
			String line = lines.get(number - 1).replace("\uFEFF", "").strip();
			if (line.startsWith("#")) {
				issued = issued(line, number, issued);
			}
			else if (!line.isEmpty() && header.isEmpty()) {
				header = header(line, number);
			}
			else if (!line.isEmpty()) {
				days.add(day(header, fields(line, number), number));
			}
		}
		if (header.isEmpty()) {
			throw new BadInput("there is no line of column names", "line 1", "begin with " + SHAPE);
		}
		return new ForecastCsv(issued, days);
	}

	private static @Nullable Instant issued(String line, int number, @Nullable Instant before) {
		String comment = line.substring(1).strip();
		if (!comment.toLowerCase(Locale.ROOT).startsWith("issued:")) {
			return before;
		}
		try {
			return OffsetDateTime.parse(comment.substring("issued:".length()).strip()).toInstant();
		}
		catch (DateTimeException ex) {
			throw new BadInput("the time of issue can't be read", "line " + number,
					"write it like # issued: 2026-11-25T06:00:00Z");
		}
	}

	private static List<String> header(String line, int number) {
		List<String> names = fields(line, number).stream().map((name) -> name.toLowerCase(Locale.ROOT)).toList();
		for (String name : names) {
			if (!COLUMNS.contains(name)) {
				throw new BadInput("column '%s' isn't known".formatted(name), "line " + number,
						"use the columns %s, and snow_mm if there is".formatted(SHAPE));
			}
		}
		if (!names.contains("date") || names.size() < 2 || Set.copyOf(names).size() < names.size()) {
			throw new BadInput("the columns lack date, or name one twice", "line " + number, "begin with " + SHAPE);
		}
		return names;
	}

	private static List<String> fields(String line, int number) {
		return CsvFields.of(line)
			.orElseThrow(() -> new BadInput("a quote is left open", "line " + number, "close or remove it"));
	}

	private static ForecastDay day(List<String> header, List<String> fields, int number) {
		if (fields.size() != header.size()) {
			throw new BadInput("there are %d fields for %d columns".formatted(fields.size(), header.size()),
					"line " + number, "give each column a field, empty where nothing is known");
		}
		LocalDate day;
		try {
			day = LocalDate.parse(fields.get(header.indexOf("date")));
		}
		catch (DateTimeException ex) {
			throw new BadInput("'%s' is no date".formatted(fields.get(header.indexOf("date"))), "line " + number,
					"write the day as YYYY-MM-DD");
		}
		Integer minimum = value(header, fields, "min_c", 10, number);
		Integer maximum = value(header, fields, "max_c", 10, number);
		if (minimum != null && maximum != null && minimum > maximum) {
			throw new BadInput("the minimum is above the maximum", "line " + number, "correct one of them");
		}
		return new ForecastDay(day, minimum, maximum, value(header, fields, "precip_mm", 10, number),
				value(header, fields, "snow_mm", 1, number), value(header, fields, "wind_ms", 10, number),
				value(header, fields, "min_rh_percent", 1, number));
	}

	private static @Nullable Integer value(List<String> header, List<String> fields, String column, int scale,
			int number) {
		int at = header.indexOf(column);
		if (at < 0 || fields.get(at).isEmpty()) {
			return null;
		}
		String text = fields.get(at);
		if (!text.matches("[+-]?\\d{1,5}(\\.\\d{1,20})?")) {
			throw new BadInput("%s '%s' is no number".formatted(column, text), "line " + number,
					"write it like 12.5, or leave it empty");
		}
		return (int) Math.round(Double.parseDouble(text) * scale);
	}

}
