package org.leafward.lookalikes;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.Letter;
import org.leafward.accounts.Letters;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.Roles;
import org.leafward.lookalikes.store.CaseTable;
import org.leafward.lookalikes.store.NoteTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The help desk: the specialists of a county, and whom they hand a case to. It sees the
 * cases of which somebody asked it, and no others.
 */
@Service
public class CaseDesk {

	/** Notes of one case. */
	static final int MOST_NOTES = 200;

	private static final int LONGEST = 2000;

	private final Cases cases;

	private final CaseTable table;

	private final NoteTable notes;

	private final Roles roles;

	private final People people;

	private final ObjectProvider<Letters> letters;

	private final String baseUrl;

	CaseDesk(Cases cases, CaseTable table, NoteTable notes, Roles roles, People people, ObjectProvider<Letters> letters,
			@Value("${leafward.base-url}") String baseUrl) {
		this.cases = cases;
		this.table = table;
		this.notes = notes;
		this.roles = roles;
		this.people = people;
		this.letters = letters;
		this.baseUrl = baseUrl.endsWith("/") ? baseUrl.substring(0, baseUrl.length() - 1) : baseUrl;
	}

	/**
	 * Asks the help desk. From now on it sees the case.
	 * @param id the case
	 * @return the case as it is now
	 * @throws NotThere when there is none
	 * @throws BadInput when nobody knows the county
	 */
	@Transactional
	public PlantCase ask(CaseId id) {
		return this.cases.change(id, (edit) -> {
			if (edit.before().county().isBlank()) {
				throw new BadInput("no county is known for this plant", "county",
						"tell the county of the site first, or open a case that names one");
			}
			if (edit.helpWantedAt == null) {
				edit.helpWantedAt = this.cases.now();
			}
		});
	}

	/**
	 * Whether somebody is there to answer.
	 * @param one a case of which the help desk is asked
	 * @return false when nobody serves its county
	 */
	@Transactional(readOnly = true)
	public boolean answered(PlantCase one) {
		return !this.roles.serving(one.county()).isEmpty();
	}

	/**
	 * Cases of some counties, and those that were handed to somebody.
	 * @param counties the counties; empty for none
	 * @param me to whom; null for nobody
	 * @param closed the closed ones, the latest first, rather than the others, of which
	 * those come first that wait longest
	 * @param page from 0
	 * @param size 1 to 200
	 * @return never null
	 */
	@Transactional(readOnly = true)
	public List<PlantCase> inbox(Collection<String> counties, @Nullable PersonId me, boolean closed, int page,
			int size) {
		return this.table.desk(counties, me, closed, page, size);
	}

	/**
	 * What was found in some counties, whether or not the help desk was asked: numbers
	 * tell nobody's garden.
	 * @param counties the counties
	 * @param since closed on this day or later
	 * @return the most frequent first
	 */
	@Transactional(readOnly = true)
	public List<FoundCount> counts(Collection<String> counties, LocalDate since) {
		return this.table.counts(counties, since);
	}

	/**
	 * Who can look after cases of a county.
	 * @param county its name
	 * @return specialists first
	 */
	@Transactional(readOnly = true)
	public List<Person> helpers(String county) {
		List<PersonId> serving = this.roles.serving(county);
		Map<PersonId, Person> found = this.people.find(serving);
		return serving.stream().map(found::get).filter(Objects::nonNull).toList();
	}

	/**
	 * Hands a case to somebody, who sees it from now on.
	 * @param id the case
	 * @param helper one of {@link #helpers}; null to take it back
	 * @return the case as it is now
	 * @throws NotThere when there is none
	 * @throws BadInput when they don't serve its county
	 */
	@Transactional
	public PlantCase assign(CaseId id, @Nullable PersonId helper) {
		return this.cases.change(id, (edit) -> {
			if (helper != null && !this.roles.serving(edit.before().county()).contains(helper)) {
				throw new BadInput("they are neither a specialist of this county nor a coordinator", "helper",
						"choose somebody from the list");
			}
			edit.assigned = helper;
		});
	}

	/**
	 * Writes a note. One of the help desk goes to the gardener by mail too, where their
	 * address is confirmed.
	 * @param id the case
	 * @param author who writes; null for an operator
	 * @param fromDesk whether it comes from the help desk
	 * @param text 1 to 2,000 characters
	 * @return whether a mail was handed on
	 * @throws NotThere when there is no such case
	 * @throws BadInput when it is empty or too long, or the case has {@value #MOST_NOTES}
	 */
	@Transactional
	public boolean write(CaseId id, @Nullable PersonId author, boolean fromDesk, String text) {
		if (text.isBlank()) {
			throw new BadInput("there is nothing in the note", "words", "write what you saw or want to ask first");
		}
		String words = Given.text("words", text).strip();
		if (words.length() > LONGEST) {
			throw new BadInput("it has %d characters".formatted(words.length()), "words",
					"use at most %,d".formatted(LONGEST));
		}
		PlantCase one = this.cases.change(id, (edit) -> {
			if (this.notes.count(id) >= MOST_NOTES) {
				throw new BadInput("the case has %d notes".formatted(MOST_NOTES), "words", "go on in a new case");
			}
		});
		this.notes.add(id, new CaseNote(UUID.randomUUID(), author, fromDesk, words, this.cases.now()));
		return fromDesk && !one.person().equals(author) && mail(one, words);
	}

	private boolean mail(PlantCase one, String words) {
		Optional<Letters> open = this.letters.stream().filter(Letters::canSend).findFirst();
		Optional<Person> person = this.people.find(one.person());
		String address = person.flatMap(Person::mailbox).orElse(null);
		if (open.isEmpty() || address == null) {
			return false;
		}
		String plant = one.plant().replaceAll("\\s+", " ");
		open.get()
			.send(new Letter(address, person.map(Person::name).orElse(""), "The help desk wrote about your plant", """
					The help desk of %s wrote about your %s:

					%s

					The case with its questions, photos and what to do:

					%s/cases/%s

					What a case says is never certain. Labels, local codes and licensed practice come before it.
					""".formatted(one.county(), plant, words, this.baseUrl, one.id())));
		return true;
	}

	@Transactional(readOnly = true)
	public List<CaseNote> notes(CaseId id) {
		return this.notes.of(id);
	}

}
