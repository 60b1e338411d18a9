package org.leafward.climate.source.ghcn;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.LineProblem;
import org.leafward.climate.StationId;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;

/** Takes values and problems from the lines of a file, and counts. */
final class GhcnCollector {

	/** How both layouts write a missing value. */
	static final int MISSING = -9999;

	private static final Element[] ELEMENTS = Element.values();

	private final DailyRecord.Builder builder = DailyRecord.builder();

	private final List<LineProblem> problems = new ArrayList<>();

	private final StationId station;

	private final byte[] stationBytes;

	private @Nullable String otherStation;

	private long line;

	private long problemsInAll;

	private long kept;

	private long flagged;

	private long missing;

	GhcnCollector(StationId station) {
		this.station = station;
		this.stationBytes = station.value().getBytes(StandardCharsets.ISO_8859_1);
	}

	void nextLine() {
		this.line++;
	}

	long line() {
		return this.line;
	}

	String station() {
		return this.station.value();
	}

	@Nullable String otherStation() {
		return this.otherStation;
	}

	boolean ours(byte[] bytes) {
		for (int at = 0; at < this.stationBytes.length; at++) {
			if (bytes[at] != this.stationBytes[at]) {
				String other = new String(bytes, 0, this.stationBytes.length, StandardCharsets.ISO_8859_1)
					.replaceAll("[^A-Za-z0-9_-]", "?");
				this.otherStation = other;
				problem("the line is of station %s, not of %s".formatted(other, this.station.value()),
						"remove the line");
				return false;
			}
		}
		return true;
	}

	/** Most elements are none of ours; that is no problem. */
	@Nullable Element element(byte[] bytes, int at) {
		for (Element element : ELEMENTS) {
			String name = element.name();
			if (bytes[at] == name.charAt(0) && bytes[at + 1] == name.charAt(1) && bytes[at + 2] == name.charAt(2)
					&& bytes[at + 3] == name.charAt(3)) {
				return element;
			}
		}
		return null;
	}

	boolean goodYear(int year) {
		return year >= DailyRecord.FIRST_YEAR && year <= DailyRecord.LAST_YEAR;
	}

	void value(Element element, LocalDate day, int value, boolean failed) {
		if (value == MISSING) {
			this.missing++;
		}
		else if (failed) {
			this.flagged++;
		}
		else if (!element.plausible(value)) {
			problem("%s on %s is %d, outside %d to %d".formatted(element, day, value, element.lowest(),
					element.highest()), "correct or remove the value");
		}
		else if (this.builder.set(element, day, value)) {
			problem("%s on %s is given twice, differently; the later value %d is taken".formatted(element, day, value),
					"remove one of them");
		}
		else {
			this.kept++;
		}
	}

	void problem(String what, String mend) {
		this.problemsInAll++;
		if (this.problems.size() < GhcnReader.MOST_PROBLEMS) {
			this.problems.add(new LineProblem(this.line, what, mend));
		}
	}

	GhcnFile finish() {
		return new GhcnFile(this.builder.build(), this.line, this.kept, this.flagged, this.missing,
				List.copyOf(this.problems), this.problemsInAll);
	}

}
