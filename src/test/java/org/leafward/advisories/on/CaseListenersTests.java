package org.leafward.advisories.on;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.leafward.advisories.NearCase;
import org.leafward.advisories.Proposals;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Phrasebooks;
import org.leafward.lookalikes.CaseClosed;
import org.leafward.lookalikes.ClosedCases;
import org.leafward.support.SettableClock;
import org.mockito.ArgumentCaptor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.BDDMockito.given;
import static org.mockito.BDDMockito.then;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;

/** Which closed cases are shown to those who find several near each other. */
class CaseListenersTests {

	private final ClosedCases cases = mock();

	private final Proposals proposals = mock();

	private final CaseListeners listener = new CaseListeners(this.cases, this.proposals,
			new Phrasebooks(new KnowledgeFiles(""), new KnowledgeReader(), List.of()),
			new SettableClock(Instant.parse("2026-08-20T12:00:00Z")));

	private static CaseClosed closed(String cause, Double latitude, String species) {
		return new CaseClosed(UUID.randomUUID(), cause, "HELP_DESK", "Alder County", latitude,
				(latitude != null) ? -91.4 : null, species, LocalDate.of(2026, 8, 10), LocalDate.of(2026, 8, 20));
	}

	@Test
	@SuppressWarnings("unchecked")
	void casesOfTheSameCauseWithPlaceAndSpeciesCount() {
		CaseClosed news = closed("bacterial-scorch", 42.3, "quercus-rubra");
		given(this.cases.title("bacterial-scorch")).willReturn(Optional.of("Suspected bacterial leaf scorch"));
		given(this.cases.since(LocalDate.of(2026, 7, 21))).willReturn(List.of(news,
				closed("bacterial-scorch", 42.4, "quercus-palustris"), closed("salt-spray", 42.3, "pinus-strobus"),
				closed("bacterial-scorch", null, "quercus-rubra"), closed("bacterial-scorch", 42.3, null)));
		this.listener.on(news);
		ArgumentCaptor<List<NearCase>> shown = ArgumentCaptor.forClass(List.class);
		then(this.proposals).should().fromCases(shown.capture());
		assertThat(shown.getValue()).extracting(NearCase::species)
			.containsExactly("quercus-rubra", "quercus-palustris");
		assertThat(shown.getValue().get(0).causeWords().english()).isEqualTo("Suspected bacterial leaf scorch");
		assertThat(shown.getValue().get(0).at().latitude()).isEqualTo(42.3);
	}

	@Test
	void aCaseWithoutACauseOfTheKeyAsksNobody() {
		this.listener.on(closed(null, 42.3, "quercus-rubra"));
		then(this.proposals).should(never()).fromCases(any());
	}

}
