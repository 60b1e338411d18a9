package org.leafward.amounts.limits;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.springframework.stereotype.Component;

/** The limits of all counties, as they were when the server started. */
@Component
public class WateringLimitTable {

	private static final String SCHEMA = "schema/watering-1.json";

	private final Map<String, WateringLimit> byCounty = new HashMap<>();

	private final String fingerprint;

	/**
	 * Reads the limits.
	 * @param files finds the files
	 * @param reader reads them
	 * @throws BrokenKnowledge with every problem of every file
	 */
	public WateringLimitTable(KnowledgeFiles files, KnowledgeReader reader) {
		List<KnowledgeFile> all = files.of("watering");
		this.fingerprint = KnowledgeFile.fingerprint(all, "");
		List<Problem> problems = new ArrayList<>();
		for (KnowledgeFile file : all) {
			Reading<WateringFile> reading = reader.read(file, SCHEMA, WateringFile.class);
			problems.addAll(reading.problems());
			WateringFile content = reading.value();
			for (int i = 0; content != null && i < content.limits().size(); i++) {
				WateringLimit limit = limit(content.limits().get(i));
				if (this.byCounty.putIfAbsent(key(limit.county()), limit) != null) {
					problems.add(reading.places()
						.problem("/limits/%d/county".formatted(i), "'%s' has two limits".formatted(limit.county()),
								"put both into one entry"));
				}
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
	}

	/**
	 * The limit of a county.
	 * @param county its name, case doesn't matter
	 * @return empty when none is known
	 */
	public Optional<WateringLimit> of(String county) {
		return Optional.ofNullable(this.byCounty.get(key(county)));
	}

	/**
	 * Stands for all limits.
	 * @return the same text for the same limits
	 */
	public String fingerprint() {
		return this.fingerprint;
	}

	private static String key(String county) {
		return county.strip().toLowerCase(Locale.ROOT);
	}

	private static WateringLimit limit(WateringFile.Entry entry) {
		Set<DayOfWeek> days = entry.days()
			.stream()
			.map((day) -> DayOfWeek.valueOf(day.toUpperCase(Locale.ROOT)))
			.collect(Collectors.toSet());
		return new WateringLimit(entry.county().strip(), days, hours(entry.hours()), entry.concerns(), entry.source(),
				entry.address());
	}

	private static WateringLimit.@Nullable Hours hours(WateringFile.@Nullable Clock clock) {
		return (clock != null) ? new WateringLimit.Hours(LocalTime.parse(clock.from()), LocalTime.parse(clock.to()))
				: null;
	}

}
