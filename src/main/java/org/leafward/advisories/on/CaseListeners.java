package org.leafward.advisories.on;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.NearCase;
import org.leafward.advisories.Proposals;
import org.leafward.advisories.core.cases.CaseClusters;
import org.leafward.language.Language;
import org.leafward.language.Phrasebooks;
import org.leafward.lookalikes.CaseClosed;
import org.leafward.lookalikes.ClosedCases;
import org.leafward.measure.GeoPoint;
import org.springframework.modulith.events.ApplicationModuleListener;
import org.springframework.stereotype.Component;

/**
 * Looks whether a case that was closed has others of the same cause near it. Proposing
 * again is harmless: the cool-down of the cause lets it through once.
 */
@Component
class CaseListeners {

	private final ClosedCases cases;

	private final Proposals proposals;

	private final Phrasebooks books;

	private final Clock clock;

	CaseListeners(ClosedCases cases, Proposals proposals, Phrasebooks books, Clock clock) {
		this.cases = cases;
		this.proposals = proposals;
		this.books = books;
		this.clock = clock;
	}

	@ApplicationModuleListener(id = "advisories.case-closed")
	void on(CaseClosed event) {
		String cause = event.cause();
		if (cause == null) {
			return;
		}
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		List<NearCase> same = this.cases.since(today.minusDays(CaseClusters.DAYS))
			.stream()
			.filter((one) -> cause.equals(one.cause()))
			.flatMap((one) -> near(one, cause).stream())
			.toList();
		this.proposals.fromCases(same);
	}

	/** Without place or species it can't be said whom an advisory would concern. */
	private Optional<NearCase> near(CaseClosed one, String cause) {
		Double latitude = one.latitude();
		Double longitude = one.longitude();
		String species = one.species();
		if (latitude == null || longitude == null || species == null) {
			return Optional.empty();
		}
		String title = this.cases.title(cause).orElse(cause);
		return Optional.of(new NearCase(one.plantCase().toString(), cause,
				new Bilingual(title, this.books.ofPages(Language.SPANISH).say(title)), species,
				new GeoPoint(latitude, longitude, 0), one.seen()));
	}

}
