package org.leafward.pages;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class WaysTests {

	private static final Viewer STRANGER = new Viewer(null, "", false, false);

	private static final Viewer GARDENER = new Viewer(UUID.randomUUID(), "Nora", false, false);

	private static final Viewer COORDINATOR = new Viewer(UUID.randomUUID(), "Cem", false, false, false, Set.of(), true);

	private static final Viewer SPECIALIST = new Viewer(UUID.randomUUID(), "Ines", false, false, true,
			Set.of("Alder County"), false);

	private static final Viewer OPERATOR = new Viewer(null, "Operator", true, false);

	@Test
	void nobodySeesMoreThanFourAndTheWordForTheRest() {
		for (Viewer viewer : List.of(STRANGER, GARDENER, COORDINATOR, SPECIALIST, OPERATOR)) {
			Ways ways = viewer.ways();
			assertThat(ways.first()).hasSizeBetween(3, 4);
			assertThat(addresses(ways)).doesNotHaveDuplicates();
			assertThat(ways.rest()).isNotEmpty().allSatisfy((part) -> assertThat(part.ways()).isNotEmpty());
		}
	}

	@Test
	void noGardenerIsSentToADesk() {
		assertThat(addresses(GARDENER.ways())).contains("/advisories")
			.doesNotContain("/advisories/compose", "/help-desk", "/accounts");
		assertThat(addresses(COORDINATOR.ways())).contains("/help-desk", "/groups")
			.doesNotContain("/advisories/compose");
		assertThat(addresses(SPECIALIST.ways())).contains("/advisories/compose", "/help-desk", "/sites");
		assertThat(addresses(STRANGER.ways())).doesNotContain("/", "/sites", "/subscribe", "/rules", "/me");
	}

	@Test
	void everybodyWhoIsKnownReachesTheirOwnThings() {
		for (Viewer viewer : List.of(GARDENER, COORDINATOR, SPECIALIST)) {
			assertThat(addresses(viewer.ways())).contains("/", "/sites", "/subscribe", "/reminders", "/cases",
					"/groups", "/calculators", "/rules", "/me");
		}
	}

	@Test
	void theWordIsMarkedForPagesBehindIt() {
		assertThat(GARDENER.ways().restHolds("calculators")).isTrue();
		assertThat(GARDENER.ways().restHolds("outbox")).as("under Reminders").isTrue();
		assertThat(GARDENER.ways().restHolds("week")).isFalse();
		assertThat(GARDENER.ways().restHolds("")).isFalse();
	}

	private static List<String> addresses(Ways ways) {
		return Stream.concat(ways.first().stream(), ways.rest().stream().flatMap((part) -> part.ways().stream()))
			.map(Ways.Way::address)
			.toList();
	}

}
