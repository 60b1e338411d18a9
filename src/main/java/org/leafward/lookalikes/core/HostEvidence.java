package org.leafward.lookalikes.core;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the species says: which kind of plant it is, what it is known to suffer from, and
 * what plants of its kind never get. How much that weighs is our choice; common practice,
 * no source.
 */
final class HostEvidence {

	private static final String CATALOGUE = "Catalog of plants";

	/** A trouble that the catalogue names makes its cause this much as likely. */
	private static final double NAMED = 2.5;

	/** The same where its kind of plant is typical of the cause already. */
	private static final double NAMED_TOO = 1.5;

	/** What is only found on other plants. */
	private static final double NEVER = 0.01;

	private static final double BEARS = 0.5;

	private static final double SENSITIVE = 1.6;

	/** Plant groups and genera that are an answer of the key. */
	private static final Map<String, Set<String>> KINDS = Map.of("plant-broadleaf-evergreen",
			Set.of("broadleaf-evergreen"), "plant-needled-evergreen", Set.of("needled-evergreen"), "plant-oak",
			Set.of("oak"), "plant-maple", Set.of("maple"), "plant-elm-and-kin",
			Set.of("elm", "Platanus", "Morus", "Liquidambar"), "plant-potted-or-seedling",
			Set.of("houseplant", "transplant"));

	private HostEvidence() {
	}

	static List<RecordLine> of(Key key, RecordFacts.Plant plant) {
		List<RecordLine> lines = new ArrayList<>();
		KINDS.entrySet()
			.stream()
			.filter((kind) -> kind.getValue().stream().anyMatch((one) -> is(plant, one)))
			.map(Map.Entry::getKey)
			.sorted()
			.forEach((kind) -> add(key, kind, lines));
		if (plant.traits().contains("shade-loving")) {
			add(key, "plant-shade-loving", lines);
		}
		for (Cause cause : key.causes()) {
			if (mayGet(cause, plant) && named(cause, plant)) {
				lines.add(line("species-suffers-" + cause.id(), "It is known to suffer from this: " + cause.name(),
						Map.of(cause.id(), typical(key, cause, lines) ? NAMED_TOO : NAMED)));
			}
		}
		Map<String, Double> never = new HashMap<>();
		key.causes().stream().filter((cause) -> !mayGet(cause, plant)).forEach((cause) -> never.put(cause.id(), NEVER));
		if (!never.isEmpty()) {
			lines.add(line("species-never", (never.size() == 1) ? "Plants of its kind don’t get 1 of the causes"
					: "Plants of its kind don’t get %d of the causes".formatted(never.size()), never));
		}
		salt("soil", "soil-salt", plant.bearsSoilSalt(), lines);
		salt("spray", "salt-spray", plant.bearsSaltSpray(), lines);
		return lines;
	}

	private static void add(Key key, String kind, List<RecordLine> lines) {
		key.evidence(kind)
			.ifPresent((answer) -> lines.add(RecordLine.of("species-" + kind, RecordLine.Kind.SPECIES,
					"It is " + answer.brief(), CATALOGUE, kind, true)));
	}

	private static void salt(String where, String cause, @Nullable String bears, List<RecordLine> lines) {
		String in = where.equals("soil") ? "salt in the soil" : "salt spray";
		if ("high".equals(bears)) {
			lines.add(line("species-bears-" + where, "It bears " + in + " well", Map.of(cause, BEARS)));
		}
		else if ("low".equals(bears)) {
			lines.add(line("species-bears-" + where, "It bears " + in + " badly", Map.of(cause, SENSITIVE)));
		}
	}

	private static RecordLine line(String id, String words, Map<String, Double> causes) {
		return new RecordLine(id, RecordLine.Kind.SPECIES, words, CATALOGUE, null, true, causes);
	}

	private static boolean typical(Key key, Cause cause, List<RecordLine> kinds) {
		return kinds.stream()
			.map(RecordLine::evidence)
			.anyMatch((one) -> one != null && cause.chances().getOrDefault(one, 0.0) >= key.scale().typical());
	}

	private static boolean named(Cause cause, RecordFacts.Plant plant) {
		return plant.troubles().contains(cause.hosts().trouble())
				|| cause.hosts().carries().stream().anyMatch(plant.traits()::contains);
	}

	/** What the catalogue names goes before the key's rough bounds. */
	private static boolean mayGet(Cause cause, RecordFacts.Plant plant) {
		Hosts hosts = cause.hosts();
		if (plant.troubles().contains(hosts.trouble())) {
			return true;
		}
		boolean among = hosts.only().isEmpty() || hosts.only().stream().anyMatch((one) -> is(plant, one));
		return among && hosts.never().stream().noneMatch((one) -> is(plant, one));
	}

	private static boolean is(RecordFacts.Plant plant, String groupOrGenus) {
		return plant.groups().contains(groupOrGenus) || plant.genus().equals(groupOrGenus);
	}

}
