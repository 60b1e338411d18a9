package org.leafward.workdays;

import java.time.Clock;
import java.time.Instant;
import org.leafward.care.TaskId;
import java.util.Objects;
import java.util.Set;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonSpeech;
import org.leafward.accounts.Post;
import org.leafward.calendars.Answer;
import org.leafward.calendars.Invitation;
import org.leafward.calendars.InvitationWriter;
import org.leafward.calendars.Party;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Speech;
import org.leafward.workdays.core.words.MailWords;
import org.leafward.workdays.core.words.Voice;
import org.leafward.workdays.store.GroupTable;
import org.leafward.workdays.store.GroupTable.MemberRow;
import org.leafward.workdays.store.DayMailTable;
import org.leafward.workdays.store.DayMailTable.MessageRow;
import org.leafward.workdays.store.SignUpTable;
import org.leafward.workdays.store.SignUpTable.Asked;
import org.leafward.workdays.store.WorkdayTable;
import org.leafward.workdays.store.WorkdayTable.DayRow;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Writes mails about workdays into the outbox, in the transaction of what they tell. Who
 * has no confirmed address gets none; the pages tell them.
 */
@Component
class WorkdayMail {

	private final DayMailTable outbox;

	private final GroupTable groups;

	private final SignUpTable signUps;

	private final WorkdayTable days;

	private final AnswerTokens tokens;

	private final People people;

	private final TaskCalendar calendar;

	private final ObjectProvider<Post> post;

	private final ObjectProvider<PersonSpeech> speech;

	private final Phrasebooks books;

	private final Clock clock;

	private final String baseUrl;

	private final String answers;

	WorkdayMail(DayMailTable outbox, GroupTable groups, SignUpTable signUps, WorkdayTable days, AnswerTokens tokens,
			People people, TaskCalendar calendar, ObjectProvider<Post> post, ObjectProvider<PersonSpeech> speech,
			Phrasebooks books, Clock clock, @Value("${leafward.base-url}") String baseUrl,
			@Value("${leafward.workdays.answers:}") String answers) {
		this.outbox = outbox;
		this.groups = groups;
		this.signUps = signUps;
		this.days = days;
		this.tokens = tokens;
		this.people = people;
		this.calendar = calendar;
		this.post = post;
		this.speech = speech;
		this.books = books;
		this.clock = clock;
		this.baseUrl = baseUrl.endsWith("/") ? baseUrl.substring(0, baseUrl.length() - 1) : baseUrl;
		this.answers = answers.strip();
	}

	/** Asks the members who said that they can come on such a day. */
	void invite(DayRow day) {
		List<PersonId> free = this.groups.members(List.of(day.group()))
			.stream()
			.filter((one) -> one.weekdays().contains(day.day().getDayOfWeek()) && !one.away().contains(day.day()))
			.map(MemberRow::person)
			.toList();
		write(day, free, "invited", (words, person) -> words.invited(), Invitation.Method.REQUEST);
	}

	/** Tells all who were asked, or come, that something is otherwise. */
	void changed(DayRow day, String what) {
		write(day, concerned(day), "changed", (words, person) -> words.changed(what), Invitation.Method.REQUEST);
	}

	/** Tells somebody who waited that they have a place. */
	void placeFree(DayRow day, PersonId person) {
		write(day, List.of(person), "place", (words, one) -> words.placeFree(), Invitation.Method.REQUEST);
	}

	/** Tells all who were asked, or come, that it doesn't take place. */
	void calledOff(DayRow day, String because) {
		write(day, concerned(day), "called-off", (words, person) -> words.calledOff(because), Invitation.Method.CANCEL);
	}

	/** Takes an invitation back from somebody who left the group. */
	void noMore(DayRow day, PersonId person) {
		if (this.signUps.asked(List.of(day.id()), List.of(person)).isEmpty()) {
			return;
		}
		write(day, List.of(person), "left", (words, one) -> words.left(), Invitation.Method.CANCEL);
	}

	/** Thanks those who worked. */
	void thanks(DayRow day, Collection<SignUp> worked, int done) {
		Map<PersonId, Integer> minutes = new LinkedHashMap<>();
		worked.forEach((one) -> minutes.put(one.person(), (one.minutes() != null) ? one.minutes() : 0));
		write(day, minutes.keySet(), "thanks", (words, person) -> words.thanks(minutes.getOrDefault(person, 0), done),
				null);
	}

	/** Warns those who lead. */
	void warn(DayRow day, List<String> warnings, String instead) {
		List<PersonId> lead = this.groups.members(List.of(day.group()))
			.stream()
			.filter(MemberRow::leads)
			.map(MemberRow::person)
			.toList();
		write(day, lead, "weather", (words, person) -> words.weather(warnings, instead), null);
	}

	private List<PersonId> concerned(DayRow day) {
		List<MemberRow> members = this.groups.members(List.of(day.group()));
		List<PersonId> all = members.stream().map(MemberRow::person).toList();
		Map<PersonId, SignUp> said = new HashMap<>();
		this.signUps.of(List.of(day.id())).forEach((one) -> said.put(one.person(), one));
		List<PersonId> told = new ArrayList<>();
		Set<Asked> asked = this.signUps.asked(List.of(day.id()), all);
		for (PersonId person : all) {
			SignUp answer = said.get(person);
			boolean comes = answer != null && answer.state() != SignUpState.OUT;
			if (comes || asked.contains(new Asked(day.id(), person))) {
				told.add(person);
			}
		}
		return told;
	}

	/** What a mail says to somebody. */
	private interface Wording {

		MailWords.Words of(MailWords words, PersonId person);

	}

	/** In the words and units of each. */
	private void write(DayRow day, Collection<PersonId> to, String kind, Wording wording,
			Invitation.@Nullable Method method) {
		if (to.isEmpty()) {
			return;
		}
		Instant now = this.clock.instant();
		Map<PersonId, Person> known = this.people.find(to);
		Map<PersonId, Speech> wanted = this.speech.stream().findFirst().map((one) -> one.of(to)).orElseGet(Map::of);
		List<CareTask> tasks = tasks(day);
		for (PersonId id : to) {
			Person person = known.get(id);
			String address = (person != null) ? person.mailbox().orElse(null) : null;
			if (person == null || address == null) {
				continue;
			}
			Speech speech = wanted.getOrDefault(id, Speech.USUAL);
			Voice voice = new Voice(this.books.ofPages(speech.language()), speech.units());
			String token = this.tokens.ask(day.id(), id, now);
			MailWords all = new MailWords(voice, day.groupName(), day.day(), day.begins(), day.ends(),
					day.meetingPoint(), tasks.stream().map((task) -> line(voice, task)).toList(),
					this.baseUrl + "/w/" + token, this.baseUrl + "/workdays/" + day.id());
			MailWords.Words words = wording.of(all, id);
			String calendar = (method != null)
					? InvitationWriter.write(invitation(day, person, address, method, token, all.title(), words, now))
					: null;
			this.outbox.add(new MessageRow(UUID.randomUUID(), day.group(), day.id(), id, kind, address, person.name(),
					words.subject(), words.body(), calendar, (method != null) ? method.name() : null,
					speech.language().code(), 0, now));
		}
	}

	private static String line(Voice voice, CareTask task) {
		return "%s: %s, %s".formatted(task.siteName(), voice.measured(task.text().title()), task.plant());
	}

	private Invitation invitation(DayRow day, Person person, String address, Invitation.Method method, String token,
			String title, MailWords.Words words, Instant now) {
		Answer answer = this.signUps.find(day.id(), person.id()).map((one) -> switch (one.state()) {
			case IN -> Answer.YES;
			case WAITING -> Answer.MAYBE;
			case OUT -> Answer.NO;
		}).orElse(Answer.NONE);
		boolean cancels = method == Invitation.Method.CANCEL;
		int sequence = (cancels && day.state() == WorkdayState.FIXED) ? day.sequence() + 1 : day.sequence();
		return new Invitation(method, "workday-%s@leafward".formatted(day.id()), sequence, now,
				day.day().atTime(day.begins()).atZone(day.zone()), day.day().atTime(day.ends()).atZone(day.zone()),
				title, cancels ? words.subject() : words.body(), day.meetingPoint(),
				new Party(day.groupName(), organizer(token)), new Party(person.name(), address), answer,
				this.baseUrl + "/workdays/" + day.id());
	}

	/** Answers come to an address that only who was invited knows. */
	private String organizer(String token) {
		int at = this.answers.lastIndexOf('@');
		if (at > 0) {
			return this.answers.substring(0, at) + "+" + token + this.answers.substring(at);
		}
		return this.post.stream().findFirst().map(Post::sender).orElse("leafward@localhost");
	}

	private List<CareTask> tasks(DayRow day) {
		List<WorkdayTask> work = this.days.tasks(List.of(day.id())).stream().map(WorkdayTable.TaskRow::task).toList();
		Map<TaskId, CareTask> known = this.calendar.find(work.stream().map(WorkdayTask::task).toList());
		return work.stream().map((one) -> known.get(one.task())).filter(Objects::nonNull).toList();
	}

}
