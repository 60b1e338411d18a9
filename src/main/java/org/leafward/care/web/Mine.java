package org.leafward.care.web;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskId;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Component;

/** What the viewer of a page may open; what is others' is not there for them. */
@Component
class Mine {

	private final Register register;

	private final TaskCalendar calendar;

	private final People people;

	private final Viewers viewers;

	Mine(Register register, TaskCalendar calendar, People people, Viewers viewers) {
		this.register = register;
		this.calendar = calendar;
		this.people = people;
		this.viewers = viewers;
	}

	Site site(UUID id) {
		return this.register.find(new SiteId(id))
			.filter((found) -> this.viewers.current().mayOpen(found.owner().value()))
			.orElseThrow(() -> new NotThere("There is no site " + id));
	}

	CareTask task(UUID id) {
		return this.calendar.find(new TaskId(id))
			.filter((found) -> this.viewers.current().mayOpen(found.person().value()))
			.orElseThrow(() -> new NotThere("There is no task " + id));
	}

	/** Who is looking; null for the operator token. */
	@Nullable PersonId person() {
		UUID person = this.viewers.current().person();
		return (person == null) ? null : new PersonId(person);
	}

	/** What people are called; who is named nowhere was an operator. */
	String name(@Nullable PersonId id) {
		return Optional.ofNullable(id).flatMap(this.people::find).map(Person::name).orElse("an operator");
	}

	/** Nothing stands for the whole site. */
	static @Nullable PlantingId planting(String field, @Nullable String text) {
		try {
			return (text == null || text.isBlank()) ? null : new PlantingId(UUID.fromString(text.strip()));
		}
		catch (IllegalArgumentException ex) {
			throw new BadInput("'%s' is not a planting of this site".formatted(text), field,
					"choose one of its plantings, or none for the whole site");
		}
	}

}
