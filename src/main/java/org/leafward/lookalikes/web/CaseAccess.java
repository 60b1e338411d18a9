package org.leafward.lookalikes.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.PlantCase;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.springframework.stereotype.Component;

/**
 * Cases as far as whoever asks may open them: their own; and for the help desk those of
 * its counties of which it was asked, and those that were handed to a coordinator. What
 * is others' is not there.
 */
@Component
class CaseAccess {

	private final Cases cases;

	private final Viewers viewers;

	private final Roles roles;

	CaseAccess(Cases cases, Viewers viewers, Roles roles) {
		this.cases = cases;
		this.viewers = viewers;
		this.roles = roles;
	}

	/**
	 * A case, and as whom it is seen.
	 *
	 * @param plantCase the case
	 * @param owner whether it is theirs; the operator's are all
	 * @param desk whether they are the help desk for it
	 * @param specialist whether they may hand it to others
	 */
	record Seen(PlantCase plantCase, boolean owner, boolean desk, boolean specialist) {
	}

	/** One that they may look at, answer and write in. */
	Seen seen(UUID id) {
		PlantCase one = find(id);
		Viewer viewer = this.viewers.current();
		boolean owner = viewer.mayOpen(one.person().value());
		boolean asked = one.helpWantedAt() != null;
		boolean specialist = asked && (viewer.operator() || viewer.serves(one.county()));
		PersonId assigned = one.assigned();
		boolean handed = asked && assigned != null && assigned.value().equals(viewer.person())
				&& this.roles.of(assigned).roles().contains(Role.COORDINATOR);
		if (!owner && !specialist && !handed) {
			throw noCase(id);
		}
		boolean own = one.person().value().equals(viewer.person());
		return new Seen(one, owner, !own && (specialist || handed), specialist);
	}

	/** One that they may do everything with. */
	PlantCase own(UUID id) {
		PlantCase one = find(id);
		if (!this.viewers.current().mayOpen(one.person().value())) {
			throw noCase(id);
		}
		return one;
	}

	/** One for which they are the help desk. */
	Seen desk(UUID id) {
		Seen seen = seen(id);
		if (!seen.desk()) {
			throw noCase(id);
		}
		return seen;
	}

	private PlantCase find(UUID id) {
		return this.cases.find(new CaseId(id)).orElseThrow(() -> noCase(id));
	}

	private static NotThere noCase(UUID id) {
		return new NotThere("There is no case " + id);
	}

	/** Who looks; null for the operator token. */
	@Nullable PersonId me() {
		UUID person = this.viewers.current().person();
		return (person != null) ? new PersonId(person) : null;
	}

	Viewer viewer() {
		return this.viewers.current();
	}

	boolean coordinates() {
		PersonId me = me();
		return me != null && this.roles.of(me).roles().contains(Role.COORDINATOR);
	}

}
