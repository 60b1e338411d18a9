package org.leafward.care;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.care.store.SitePlanTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * What people note at a site, and the new plan that follows from it, in one transaction.
 */
@Component
class SiteTurn {

	private final Register register;

	private final SitePlanTable plans;

	private final Derivation derivation;

	private final Clock clock;

	private final TransactionTemplate transaction;

	SiteTurn(Register register, SitePlanTable plans, Derivation derivation, Clock clock,
			PlatformTransactionManager transactions) {
		this.register = register;
		this.plans = plans;
		this.derivation = derivation;
		this.clock = clock;
		this.transaction = new TransactionTemplate(transactions);
	}

	/**
	 * A site that somebody may write in.
	 * @param id the site
	 * @param by who; null for an operator
	 * @return the site
	 * @throws NotThere when there is none, or none of theirs
	 */
	Site open(SiteId id, @Nullable PersonId by) {
		return this.register.find(id)
			.filter((site) -> by == null || site.owner().equals(by))
			.orElseThrow(() -> new NotThere("There is no site " + id));
	}

	/**
	 * Changes something, then derives the site task by task.
	 * @param <T> what it gives
	 * @param site the site; it is locked before the change
	 * @param change what to do
	 * @return what the change gave
	 */
	<T extends Object> T change(Site site, Supplier<T> change) {
		T given = this.transaction.execute((status) -> {
			this.plans.lock(List.of(site.id()));
			T result = change.get();
			this.plans.forget(site.id());
			this.derivation.derive(List.of(site.id()));
			return result;
		});
		if (given == null) {
			throw new IllegalStateException("a change gives something");
		}
		return given;
	}

	/** Whole seconds, as the changes of tasks are. */
	Instant now() {
		return this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
	}

	LocalDate today(Site site) {
		return LocalDate.ofInstant(this.clock.instant(), site.zone());
	}

	void checkDay(Site site, LocalDate day) {
		LocalDate today = today(site);
		if (day.isAfter(today)) {
			throw new BadInput("%s is still to come".formatted(day), "day", "give the day on which it was");
		}
		if (day.isBefore(today.minusYears(1))) {
			throw new BadInput("%s is more than a year ago".formatted(day), "day",
					"give a day from %s on".formatted(today.minusYears(1)));
		}
	}

	void checkPlanting(Site site, @Nullable PlantingId planting) {
		if (planting != null
				&& this.register.find(planting).filter((found) -> found.site().equals(site.id())).isEmpty()) {
			throw new BadInput("%s is not a planting of this site".formatted(planting), "planting",
					"choose one of its plantings, or none for the whole site");
		}
	}

}
