package org.leafward.lookalikes.lab;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.leafward.lookalikes.Laboratory;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.stereotype.Component;

/** The laboratories of all counties and regions, as they were when the server started. */
@Component
public class Laboratories {

	private static final String SCHEMA = "schema/laboratories-1.json";

	private final Map<String, Laboratory> byCounty = new HashMap<>();

	private final Map<String, Laboratory> byRegion = new HashMap<>();

	/**
	 * Reads the files of {@code config/laboratories}; invented ones count in the demo
	 * only.
	 * @param files finds the files
	 * @param reader reads them
	 * @param environment tells whether this is the demo
	 * @throws BrokenKnowledge with every problem of every file
	 */
	public Laboratories(KnowledgeFiles files, KnowledgeReader reader, Environment environment) {
		boolean demo = environment.acceptsProfiles(Profiles.of("demo"));
		List<Problem> problems = new ArrayList<>();
		for (KnowledgeFile file : files.of("laboratories")) {
			Reading<LaboratoryFile> reading = reader.read(file, SCHEMA, LaboratoryFile.class);
			problems.addAll(reading.problems());
			LaboratoryFile content = reading.value();
			if (content != null && (demo || !Boolean.TRUE.equals(content.invented()))) {
				for (int i = 0; i < content.laboratories().size(); i++) {
					add(reading, "/laboratories/" + i, content.laboratories().get(i), problems);
				}
			}
		}
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
	}

	private void add(Reading<?> reading, String path, LaboratoryFile.Entry entry, List<Problem> problems) {
		Laboratory one = new Laboratory(entry.name().strip(), entry.address(), entry.telephone(), entry.mail(),
				entry.page(), entry.takes().strip());
		List<String> counties = Optional.ofNullable(entry.counties()).orElse(List.of());
		List<String> regions = Optional.ofNullable(entry.regions()).orElse(List.of());
		if (counties.isEmpty() && regions.isEmpty()) {
			problems.add(reading.places()
				.problem(path + "/name", "'%s' serves nobody".formatted(entry.name()), "give it counties or regions"));
		}
		counties.forEach((county) -> put(this.byCounty, key(county), one, reading, path, problems));
		regions.forEach((region) -> put(this.byRegion, key(region), one, reading, path, problems));
	}

	private static void put(Map<String, Laboratory> all, String key, Laboratory one, Reading<?> reading, String path,
			List<Problem> problems) {
		if (all.putIfAbsent(key, one) != null) {
			problems.add(reading.places()
				.problem(path + "/name", "'%s' has two laboratories".formatted(key),
						"name the one to which samples go"));
		}
	}

	/**
	 * The laboratory for a place.
	 * @param county its county; may be empty
	 * @param region its state or province by ISO 3166-2; may be empty
	 * @return that of the county before that of the region; empty when none is known
	 */
	public Optional<Laboratory> of(String county, String region) {
		return Optional.ofNullable(this.byCounty.get(key(county)))
			.or(() -> Optional.ofNullable(this.byRegion.get(key(region))));
	}

	private static String key(String name) {
		return name.strip().toLowerCase(Locale.ROOT);
	}

}
