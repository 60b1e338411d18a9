package org.leafward.accounts.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.measure.NotThere;
import org.leafward.measure.Given;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** People by API. */
@RestController
@Tag(name = "People", description = "Who is reminded, and where")
@RequestMapping("/api/v1/people")
class PeopleApi {

	private final People people;

	private final Viewers viewers;

	PeopleApi(People people, Viewers viewers) {
		this.people = people;
		this.viewers = viewers;
	}

	/**
	 * A person as given.
	 *
	 * @param name 1 to 100 characters
	 * @param email an address
	 * @param zone time zone, for example America/Chicago
	 */
	record PersonRequest(@Nullable String name, @Nullable String email, @Nullable String zone) {
	}

	/**
	 * A person as answered.
	 *
	 * @param id identifier
	 * @param name the name
	 * @param email the address; null without one
	 * @param confirmed whether its owner has said that mail may come
	 * @param zone time zone
	 */
	record PersonAnswer(UUID id, String name, @Nullable String email, boolean confirmed, String zone) {

		static PersonAnswer of(Person person) {
			return new PersonAnswer(person.id().value(), person.name(), person.email(), person.confirmed(),
					person.zone().getId());
		}

	}

	@Operation(summary = "Add a person, or find the one with this address")
	@PostMapping
	@ResponseStatus(HttpStatus.CREATED)
	PersonAnswer join(@RequestBody PersonRequest request) {
		return PersonAnswer.of(this.people.join(Given.text("name", request.name()),
				Given.text("email", request.email()), Given.zone("zone", request.zone())));
	}

	@Operation(summary = "Your own entry, everybody by name for the operator")
	@GetMapping
	List<PersonAnswer> list(@RequestParam(defaultValue = "0") int page, @RequestParam(defaultValue = "50") int size) {
		Viewer viewer = this.viewers.current();
		int from = Given.page(page);
		int most = Given.size(size);
		if (viewer.operator()) {
			return this.people.list(from, most).stream().map(PersonAnswer::of).toList();
		}
		return Stream.ofNullable((from == 0) ? viewer.person() : null)
			.flatMap((id) -> this.people.find(new PersonId(id)).stream())
			.map(PersonAnswer::of)
			.toList();
	}

	@Operation(summary = "One person")
	@GetMapping("/{id}")
	PersonAnswer one(@PathVariable UUID id) {
		return this.people.find(new PersonId(id))
			.filter((one) -> this.viewers.current().mayOpen(id))
			.map(PersonAnswer::of)
			.orElseThrow(() -> new NotThere("There is no person " + id));
	}

}
