package org.leafward.register;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.register.store.SiteEntity;
import org.leafward.register.store.SiteRepository;
import org.leafward.register.store.SoilTestEntity;
import org.leafward.register.store.SoilTestRepository;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The soil tests of sites. The latest of a bed tells whether it has tasks against salt
 * and sodium.
 */
@Service
public class SoilTests {

	/** A bound against scripts. */
	private static final int MOST_A_DAY = 20;

	private static final int MOST_YEARS = 5;

	private final SoilTestRepository tests;

	private final SiteRepository sites;

	private final OwnPlantings plantings;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	SoilTests(SoilTestRepository tests, SiteRepository sites, OwnPlantings plantings, Clock clock,
			ApplicationEventPublisher events) {
		this.tests = tests;
		this.sites = sites;
		this.plantings = plantings;
		this.clock = clock;
		this.events = events;
	}

	/**
	 * Keeps a soil test.
	 * @param site where
	 * @param test the test
	 * @param by who enters it; null for an operator
	 * @return the test
	 * @throws NotThere when there is no such site
	 * @throws BadInput when the day is to come or more than five years ago, the planting
	 * is not one of the site's, or the day has twenty tests already
	 */
	@Transactional
	public KeptSoilTest keep(SiteId site, NewSoilTest test, @Nullable PersonId by) {
		Site found = this.sites.hold(site.value())
			.map(SiteEntity::toSite)
			.orElseThrow(() -> new NotThere("There is no site " + site));
		checkDay(test.day(), LocalDate.ofInstant(this.clock.instant(), found.zone()));
		this.plantings.check(site, test.planting());
		if (this.tests.countBySiteAndDay(site.value(), test.day()) >= MOST_A_DAY) {
			throw new BadInput("one site has at most %d soil tests on a day".formatted(MOST_A_DAY), "day",
					"take back those that are mistaken first");
		}
		KeptSoilTest saved = this.tests
			.save(new SoilTestEntity(UUID.randomUUID(), site, test, by,
					this.clock.instant().truncatedTo(ChronoUnit.MICROS)))
			.toTest();
		this.events.publishEvent(new SoilTestsChanged(site.value()));
		return saved;
	}

	private static void checkDay(LocalDate day, LocalDate today) {
		if (day.isAfter(today)) {
			throw new BadInput("%s is still to come".formatted(day), "day", "give the day of the sample");
		}
		LocalDate first = today.minusYears(MOST_YEARS);
		if (day.isBefore(first)) {
			throw new BadInput("%s is more than %d years ago".formatted(day, MOST_YEARS), "day",
					"soil has changed since; give a test from %s on".formatted(first));
		}
	}

	/**
	 * Takes a soil test back.
	 * @param site where it was entered
	 * @param test the test
	 * @throws NotThere when the site has no such test
	 */
	@Transactional
	public void remove(SiteId site, SoilTestId test) {
		SoilTestEntity row = this.tests.findById(test.value())
			.filter((found) -> found.toTest().site().equals(site))
			.orElseThrow(() -> new NotThere("There is no soil test " + test));
		this.tests.delete(row);
		this.events.publishEvent(new SoilTestsChanged(site.value()));
	}

	/**
	 * A page of the soil tests, the latest day first.
	 * @param site where
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public List<KeptSoilTest> latest(SiteId site, int page, int size) {
		return this.tests.latest(site.value(), PageRequest.of(page, size))
			.stream()
			.map(SoilTestEntity::toTest)
			.toList();
	}

	/**
	 * The latest test of the whole site and the latest of each bed, for several sites.
	 * @param sites where, at most 1,000
	 * @return by site, without those that have none
	 */
	@Transactional(readOnly = true)
	public Map<SiteId, List<KeptSoilTest>> latest(Collection<SiteId> sites) {
		return this.tests.newest(sites.stream().map(SiteId::value).toArray(UUID[]::new))
			.stream()
			.map(SoilTestEntity::toTest)
			.collect(Collectors.groupingBy(KeptSoilTest::site));
	}

}
