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
import org.leafward.register.OpenSites;
import org.leafward.register.PlantingId;
import org.leafward.register.SeenSite;
import org.leafward.register.Site;
import org.springframework.stereotype.Component;

/** What whoever asks may open; what is others' is not there for them. */
@Component
class Mine {

	private final OpenSites sites;

	private final TaskCalendar calendar;

	private final People people;

	private final Viewers viewers;

	Mine(OpenSites sites, TaskCalendar calendar, People people, Viewers viewers) {
		this.sites = sites;
		this.calendar = calendar;
		this.people = people;
		this.viewers = viewers;
	}

	/** One that they may change. */
	Site site(UUID id) {
		return this.sites.own(id);
	}

	/** One that they may look at, on a page. */
	SeenSite seen(UUID id) {
		return this.sites.seen(id);
	}

	/** One that they may change. */
	CareTask task(UUID id) {
		return this.calendar.find(new TaskId(id))
			.filter((found) -> this.viewers.current().mayOpen(found.person().value()))
			.orElseThrow(() -> noTask(id));
	}

	/** One of a site that they may look at. */
	CareTask seenTask(UUID id) {
		CareTask task = this.calendar.find(new TaskId(id)).orElseThrow(() -> noTask(id));
		try {
			this.sites.seen(task.site().value());
		}
		catch (NotThere ex) {
			throw noTask(id);
		}
		return task;
	}

	private static NotThere noTask(UUID id) {
		return new NotThere("There is no task " + id);
	}

	/** As whom they change a site; null for an operator who changes somebody else's. */
	@Nullable PersonId by(Site site) {
		return this.sites.actor(site);
	}

	/** As whom they change a task. */
	@Nullable PersonId by(CareTask task) {
		return this.sites.actor(this.sites.own(task.site().value()));
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
