package org.leafward.lookalikes;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.lookalikes.core.Answers;

/** A case while it is changed. */
final class CaseEdit {

	private final PlantCase before;

	CaseState state;

	Answers answers;

	Set<String> struck;

	@Nullable String leading;

	@Nullable String cause;

	@Nullable Basis basis;

	String result;

	@Nullable LocalDate sampledOn;

	@Nullable Instant helpWantedAt;

	@Nullable PersonId assigned;

	@Nullable LocalDate closedOn;

	CaseEdit(PlantCase before) {
		this.before = before;
		this.state = before.state();
		this.answers = before.answers();
		this.struck = new HashSet<>(before.struck());
		this.leading = before.leading();
		this.cause = before.cause();
		this.basis = before.basis();
		this.result = before.result();
		this.sampledOn = before.sampledOn();
		this.helpWantedAt = before.helpWantedAt();
		this.assigned = before.assigned();
		this.closedOn = before.closedOn();
	}

	PlantCase before() {
		return this.before;
	}

	PlantCase done(Instant at) {
		PlantCase was = this.before;
		return new PlantCase(was.id(), was.person(), was.site(), was.planting(), was.species(), was.plant(),
				was.county(), was.zone(), was.seen(), this.state, this.answers, this.struck, this.leading, this.cause,
				this.basis, this.result, this.sampledOn, this.helpWantedAt, this.assigned, was.follows(),
				was.openedAt(), at, this.closedOn);
	}

}
