package org.leafward.workdays.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.workdays.Group;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.leafward.workdays.Workday;
import org.leafward.workdays.WorkdayId;
import org.leafward.workdays.WorkdayState;
import org.leafward.workdays.Workdays;
import org.springframework.stereotype.Component;

/**
 * Groups and workdays as far as whoever asks may open them. What is others' is not there
 * for them; what only those who lead may do isn't there for other members.
 */
@Component
class Ours {

	private final Groups groups;

	private final Workdays workdays;

	private final Viewers viewers;

	private final Roles roles;

	Ours(Groups groups, Workdays workdays, Viewers viewers, Roles roles) {
		this.groups = groups;
		this.workdays = workdays;
		this.viewers = viewers;
		this.roles = roles;
	}

	/** Who asks; null for the operator token. */
	@Nullable PersonId me() {
		UUID person = this.viewers.current().person();
		return (person != null) ? new PersonId(person) : null;
	}

	/** Who asks, where somebody has to be it. */
	PersonId somebody() {
		PersonId me = me();
		if (me == null) {
			throw new BadInput("the operator token is nobody", "person", "sign in as somebody");
		}
		return me;
	}

	/** A group that they belong to. */
	Group group(UUID id) {
		return this.groups.find(new GroupId(id))
			.filter((group) -> operator() || belongs(group))
			.orElseThrow(() -> new NotThere("There is no group " + id));
	}

	/** A group that they lead. */
	Group led(UUID id) {
		return this.groups.find(new GroupId(id))
			.filter(this::leads)
			.orElseThrow(() -> new NotThere("There is no group " + id));
	}

	boolean leads(Group group) {
		PersonId me = me();
		return operator() || (me != null && group.leads(me));
	}

	boolean belongs(Group group) {
		PersonId me = me();
		return me != null && group.member(me).isPresent();
	}

	private boolean operator() {
		Viewer viewer = this.viewers.current();
		return viewer.operator();
	}

	/** Whether they may make groups. */
	boolean coordinates() {
		PersonId me = me();
		return me != null && (operator() || this.roles.of(me).roles().contains(Role.COORDINATOR));
	}

	/** A workday of a group of theirs; one that is proposed for those who lead only. */
	Workday workday(UUID id) {
		return this.workdays.find(new WorkdayId(id)).filter((day) -> {
			Group group = this.groups.find(day.group()).orElse(null);
			return group != null && (leads(group) || (belongs(group) && day.state() != WorkdayState.PROPOSED));
		}).orElseThrow(() -> new NotThere("There is no workday " + id));
	}

	/** A workday of a group that they lead. */
	Workday ledWorkday(UUID id) {
		return this.workdays.find(new WorkdayId(id))
			.filter((day) -> this.groups.find(day.group()).filter(this::leads).isPresent())
			.orElseThrow(() -> new NotThere("There is no workday " + id));
	}

	Group of(Workday day) {
		return this.groups.find(day.group()).orElseThrow(() -> new NotThere("There is no group " + day.group()));
	}

}
