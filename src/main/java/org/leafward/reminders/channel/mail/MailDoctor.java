package org.leafward.reminders.channel.mail;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leafward.reminders.core.Links;
import org.leafward.reminders.core.OneLine;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Service;

/** Tells the operator what stands between a mail and its reader. */
@Service
public class MailDoctor {

	private static final int LONGEST = 200;

	private final SmtpLines lines;

	private final Links links;

	private final MailSettings settings;

	private final DnsTexts texts;

	@Autowired
	MailDoctor(SmtpLines lines, Links links, MailSettings settings) {
		this(lines, links, settings, new DnsTexts("dns:"));
	}

	MailDoctor(SmtpLines lines, Links links, MailSettings settings, DnsTexts texts) {
		this.lines = lines;
		this.links = links;
		this.settings = settings;
		this.texts = texts;
	}

	/**
	 * What can be told by the settings alone; asks nobody.
	 * @return in the order in which a mail meets it
	 */
	public List<MailFinding> settings() {
		return List.of(server(), sender(), oneClick(), bounces());
	}

	/**
	 * What others say: the mail server, and name servers about the sender's domain. Takes
	 * some seconds for each at most, by the time-outs of the mail client.
	 * @return the same, in order
	 */
	public List<MailFinding> outside() {
		List<MailFinding> found = new ArrayList<>();
		if (this.lines.session() != null) {
			found.add(connection());
		}
		if (named(domain())) {
			found.add(spf());
			found.add(dmarc());
			found
				.add(MailFinding.look("Signature", "Whether the mail server signs mails (DKIM, RFC 6376) can't be seen "
						+ "from here. Let it sign for %s, with List-Unsubscribe and List-Unsubscribe-Post among the signed headers."
							.formatted(domain())));
		}
		return found;
	}

	private MailFinding server() {
		String where = this.lines.where();
		return where.isEmpty()
				? MailFinding.bad("Mail server", "None is set up, so mails stay in the outbox. Set spring.mail.host.")
				: MailFinding.good("Mail server", "Mails go to %s.".formatted(where));
	}

	private MailFinding sender() {
		return named(domain())
				? MailFinding.good("Sender", "Mails come from %s.".formatted(this.settings.from().line()))
				: MailFinding.bad("Sender",
						"Nobody takes mail from %s. Set leafward.mail.from to an address of your own domain."
							.formatted(domain()));
	}

	private MailFinding oneClick() {
		return this.links.home().startsWith("https://")
				? MailFinding.good("Leaving by one click", "Mail programs can show a button for it (RFC 8058).")
				: MailFinding.look("Leaving by one click",
						"Large mail providers ask for it, and it needs https. Set leafward.base-url to an https address.");
	}

	private MailFinding bounces() {
		String what = "Return address";
		ReturnPath path = this.settings.bounces();
		if (path == null) {
			return MailFinding.look(what, "What can't be delivered later on comes back to the sender, and addresses at "
					+ "which nobody is are written to again. Set leafward.mail.bounces, and have its mail sent to "
					+ "/api/v1/reminders/bounces.");
		}
		String own = domain();
		String theirs = path.domain().toLowerCase(Locale.ROOT);
		// RFC 7489 section 3.1.2, without the list of public suffixes.
		boolean aligned = own.equals(theirs) || own.endsWith("." + theirs) || theirs.endsWith("." + own);
		return aligned
				? MailFinding.good(what,
						"Failures come to an address of their own for each mail, at %s.".formatted(theirs))
				: MailFinding.look(what, "%s is another domain than the sender's, %s, so SPF alone won't do for DMARC."
					.formatted(theirs, own));
	}

	private MailFinding connection() {
		SmtpTrouble trouble = this.lines.tryOut();
		return (trouble == null) ? MailFinding.good("Connection", "The mail server answers and lets us in.")
				: MailFinding.bad("Connection", "No mail can leave: %s.".formatted(trouble.delivery().reason()));
	}

	/** RFC 7208 section 4.5: of the domain in MAIL FROM. */
	private MailFinding spf() {
		ReturnPath path = this.settings.bounces();
		String domain = (path != null) ? path.domain() : domain();
		String what = "Who may send (SPF)";
		try {
			List<String> records = this.texts.of(domain)
				.stream()
				.filter((text) -> text.matches("(?is)v=spf1( .*)?"))
				.toList();
			if (records.isEmpty()) {
				return MailFinding.bad(what,
						"%s has no such record; many servers refuse its mail or take it for spam.".formatted(domain));
			}
			return (records.size() == 1) ? MailFinding.good(what, domain + ": " + OneLine.of(records.get(0), LONGEST))
					: MailFinding.bad(what,
							"%s has %d such records, so none counts. Leave one.".formatted(domain, records.size()));
		}
		catch (IOException ex) {
			return unknown(what, domain);
		}
	}

	/** RFC 7489 section 6.6.3: of the domain, or of the one above. */
	private MailFinding dmarc() {
		String what = "What to do with forged mail (DMARC)";
		String domain = domain();
		try {
			while (named(domain)) {
				for (String text : this.texts.of("_dmarc." + domain)) {
					if (text.matches("(?is)v=DMARC1\\s*;.*")) {
						return MailFinding.good(what, domain + ": " + OneLine.of(text, LONGEST));
					}
				}
				domain = domain.substring(domain.indexOf('.') + 1);
			}
			return MailFinding.look(what,
					"_dmarc.%s has no such record; large mail providers ask for one. v=DMARC1; p=none is enough."
						.formatted(domain()));
		}
		catch (IOException ex) {
			return unknown(what, domain);
		}
	}

	private static MailFinding unknown(String what, String domain) {
		return MailFinding.look(what, "No name server could tell about %s.".formatted(domain));
	}

	private String domain() {
		return this.settings.from().domain().toLowerCase(Locale.ROOT);
	}

	private static boolean named(String domain) {
		return domain.contains(".") && !domain.endsWith(".local") && !domain.endsWith(".localhost");
	}

}
