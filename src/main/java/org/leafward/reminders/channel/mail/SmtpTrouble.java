package org.leafward.reminders.channel.mail;

import jakarta.mail.MessagingException;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Set;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPSenderFailedException;
import org.jspecify.annotations.Nullable;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.core.OneLine;
import org.springframework.mail.MailAuthenticationException;
import org.springframework.mail.MailException;
import org.springframework.mail.MailSendException;

/**
 * Tells trouble that passes from trouble that stays, by the first digit of the reply (RFC
 * 5321 section 4.2.1: 4 is transient, 5 is permanent). Trouble without a reply is a
 * connection that failed; a connection lost after the last dot is among it, and its mail
 * is tried again under the same Message-ID (RFC 1047).
 */
final class SmtpTrouble {

	private static final int LONGEST_REASON = 500;

	private SmtpTrouble() {
	}

	static Delivery judge(MailException trouble) {
		if (trouble instanceof MailAuthenticationException) {
			// The operator can mend a password; that is no reason to lose the mail.
			return delivery(Outcome.UNREACHABLE, "the mail server did not accept our name and password", trouble);
		}
		Set<Throwable> seen = Collections.newSetFromMap(new IdentityHashMap<>());
		Deque<Throwable> open = new ArrayDeque<>();
		open.add(trouble);
		Throwable deepest = trouble;
		while (!open.isEmpty()) {
			Throwable next = open.remove();
			if (!seen.add(next)) {
				continue;
			}
			deepest = next;
			// The reply to RCPT hangs below the general complaint, so look at it first.
			children(next, open);
		}
		return seen.stream()
			.filter((each) -> replyCode(each) >= 400)
			.min((a, b) -> Integer.compare(rank(a), rank(b)))
			.map((each) -> delivery((replyCode(each) >= 500) ? Outcome.REFUSED : Outcome.LATER, null, each))
			.orElse(delivery(Outcome.UNREACHABLE, null, deepest));
	}

	private static void children(Throwable each, Deque<Throwable> open) {
		if (each instanceof MailSendException send) {
			Collections.addAll(open, send.getMessageExceptions());
		}
		if (each instanceof MessagingException messaging && messaging.getNextException() != null) {
			open.add(messaging.getNextException());
		}
		if (each.getCause() != null) {
			open.add(each.getCause());
		}
	}

	private static int replyCode(Throwable each) {
		if (each instanceof SMTPAddressFailedException address) {
			return address.getReturnCode();
		}
		if (each instanceof SMTPSenderFailedException sender) {
			return sender.getReturnCode();
		}
		return (each instanceof SMTPSendFailedException send) ? send.getReturnCode() : 0;
	}

	/** What was said about the recipient counts before what was said about the rest. */
	private static int rank(Throwable each) {
		return (each instanceof SMTPAddressFailedException) ? 0 : 1;
	}

	private static Delivery delivery(Outcome outcome, @Nullable String what, Throwable said) {
		String reason = (what != null) ? what + ": " + said.getMessage() : String.valueOf(said.getMessage());
		return new Delivery(outcome, OneLine.of(reason, LONGEST_REASON));
	}

}
