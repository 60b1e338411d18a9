package org.leafward.reminders.channel.mail;

import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.core.OneLine;

/**
 * Why a mail was not taken. Trouble that passes is told from trouble that stays by the
 * first digit of the reply (RFC 5321 section 4.2.1: 4 is transient, 5 is permanent), and
 * whose fault it is by the step and the enhanced code.
 *
 * @param delivery what came of the mail
 * @param nobodyThere whether the address will never take mail
 * @param alarm whether only the operator can mend it and nothing else would tell them
 */
record SmtpTrouble(Delivery delivery, boolean nobodyThere, boolean alarm) {

	/**
	 * No conversation came about, so other mails would fare no better.
	 * @param trouble what went wrong
	 */
	static SmtpTrouble unreachable(MessagingException trouble) {
		// The operator can mend a password; that is no reason to lose the mails.
		boolean signIn = trouble instanceof AuthenticationFailedException;
		String reason = (signIn ? "the mail server did not accept our name and password: " : "") + deepest(trouble);
		return new SmtpTrouble(delivery(Outcome.UNREACHABLE, reason), false, signIn);
	}

	/**
	 * All connections are in use for longer than a mail should take.
	 * @param seconds how long was waited
	 */
	static SmtpTrouble busy(long seconds) {
		return new SmtpTrouble(
				delivery(Outcome.LATER, "no connection to the mail server was free for %d s".formatted(seconds)), false,
				false);
	}

	/**
	 * The connection ended without a reply.
	 * @param step how far the mail had got
	 * @param trouble what went wrong
	 */
	static SmtpTrouble lost(SmtpStep step, MessagingException trouble) {
		Outcome outcome = switch (step) {
			case CONNECTED, MAIL -> Outcome.UNREACHABLE;
			// It may be this mail at which the server stumbles, so others must not wait
			// behind it.
			case RCPT, DATA, BODY -> Outcome.LATER;
			case END -> Outcome.UNCERTAIN;
		};
		String what = (step == SmtpStep.END)
				? "the connection ended before the mail server said whether it took the mail"
				: "the connection to the mail server ended";
		return new SmtpTrouble(delivery(outcome, what + ": " + deepest(trouble)), false, false);
	}

	/**
	 * The server said no.
	 * @param step to what
	 * @param reply how it said so
	 */
	static SmtpTrouble refused(SmtpStep step, SmtpReply reply) {
		if (reply.passes()) {
			return new SmtpTrouble(delivery(Outcome.LATER, reply.words()), false, false);
		}
		if (reply.wantsSignIn()) {
			return new SmtpTrouble(
					delivery(Outcome.UNREACHABLE, "the mail server wants us to sign in: " + reply.words()), false,
					true);
		}
		// Before RCPT the server can't speak of the recipient. After DATA it does so by
		// its code only: 550 there is about
		// the words.
		boolean theirs = switch (step) {
			case CONNECTED, MAIL -> false;
			case RCPT -> reply.theirs();
			case DATA, BODY, END -> reply.theirs() && !reply.vague();
		};
		return new SmtpTrouble(delivery(theirs ? Outcome.REFUSED : Outcome.OUR_FAULT, reply.words()),
				theirs && reply.nobodyThere(), false);
	}

	private static String deepest(MessagingException trouble) {
		Throwable deepest = trouble;
		for (int depth = 0; depth < 20; depth++) {
			Throwable next = (deepest instanceof MessagingException one && one.getNextException() != null)
					? one.getNextException() : deepest.getCause();
			if (next == null || next == deepest) {
				break;
			}
			deepest = next;
		}
		return String.valueOf(deepest.getMessage());
	}

	private static Delivery delivery(Outcome outcome, String reason) {
		return new Delivery(outcome, OneLine.of(reason, SmtpReply.LONGEST));
	}

}
