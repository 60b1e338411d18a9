package org.leafward.workdays;

import java.util.Optional;
import org.leafward.accounts.MailedAnswers;
import org.leafward.accounts.PersonId;
import org.leafward.calendars.Reply;
import org.leafward.measure.BadInput;
import org.leafward.workdays.store.SignUpTable.Asked;
import org.leafward.workdays.store.WorkdayTable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

/**
 * Answers that come without signing in: by the link of an invitation, or by a calendar
 * program's mail. The token says who it is; what a mail says of its sender is not
 * believed.
 */
@Service
public class Answers implements MailedAnswers {

	private static final Logger LOG = LoggerFactory.getLogger(Answers.class);

	private final AnswerTokens tokens;

	private final WorkdayTable days;

	private final Groups groups;

	private final SignUps signUps;

	Answers(AnswerTokens tokens, WorkdayTable days, Groups groups, SignUps signUps) {
		this.tokens = tokens;
		this.days = days;
		this.groups = groups;
		this.signUps = signUps;
	}

	/**
	 * An invitation.
	 *
	 * @param workday to what
	 * @param person who
	 */
	public record Invited(WorkdayId workday, PersonId person) {
	}

	/**
	 * Whose invitation a token is of.
	 * @param token what stands in its address
	 * @return empty when it is none, and for who belongs to the group no more
	 */
	public Optional<Invited> find(String token) {
		return this.tokens.find(token).filter(this::belongs).map((one) -> new Invited(one.workday(), one.person()));
	}

	private boolean belongs(Asked asked) {
		return this.days.find(asked.workday())
			.flatMap((day) -> this.groups.find(day.group()))
			.flatMap((group) -> group.member(asked.person()))
			.isPresent();
	}

	@Override
	public boolean take(String token, String calendar) {
		Optional<Invited> invited = find(token);
		Optional<Reply> reply = Reply.read(calendar);
		if (invited.isEmpty() || reply.isEmpty()) {
			return false;
		}
		WorkdayId workday = invited.get().workday();
		PersonId person = invited.get().person();
		int sequence = this.days.find(workday).map(WorkdayTable.DayRow::sequence).orElse(0);
		// An answer to what it was before says nothing about what it is now.
		if (!reply.get().uid().equals("workday-%s@leafward".formatted(workday)) || reply.get().sequence() < sequence) {
			return false;
		}
		try {
			switch (reply.get().answer()) {
				case YES -> this.signUps.comeAsBefore(workday, person);
				case NO -> this.signUps.stayAway(workday, person);
				default -> LOG.debug("an answer that is neither yes nor no changes nothing");
			}
			return true;
		}
		catch (BadInput ex) {
			return false;
		}
	}

}
