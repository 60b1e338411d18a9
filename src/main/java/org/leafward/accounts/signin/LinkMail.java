package org.leafward.accounts.signin;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.leafward.accounts.Confirmations;
import org.leafward.accounts.EmailAddress;
import org.leafward.accounts.Letter;
import org.leafward.accounts.Letters;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.security.authentication.ott.OneTimeToken;
import org.springframework.security.web.authentication.ott.OneTimeTokenGenerationSuccessHandler;
import org.springframework.stereotype.Component;

/**
 * Writes the mails with links that work once. Everybody gets the same answer, known or
 * not.
 */
@Component
public class LinkMail implements OneTimeTokenGenerationSuccessHandler, Confirmations {

	/** Where the demo, which has no mail server, keeps the link for the next page. */
	public static final String SHOWN = LinkMail.class.getName() + ".shown";

	private final ObjectProvider<Letters> letters;

	private final OneTimeLinks links;

	private final Arrivals arrivals;

	private final People people;

	private final String baseUrl;

	private final boolean demo;

	LinkMail(ObjectProvider<Letters> letters, OneTimeLinks links, Arrivals arrivals, People people,
			@Value("${leafward.base-url}") String baseUrl, Environment environment) {
		this.letters = letters;
		this.links = links;
		this.arrivals = arrivals;
		this.people = people;
		this.baseUrl = baseUrl.endsWith("/") ? baseUrl.substring(0, baseUrl.length() - 1) : baseUrl;
		this.demo = environment.acceptsProfiles(Profiles.of("demo"));
	}

	/**
	 * Whether links can be sent.
	 * @return false without a mail server, but for the demo, which shows them
	 */
	public boolean works() {
		return this.demo || canSend();
	}

	private boolean canSend() {
		return this.letters.stream().anyMatch(Letters::canSend);
	}

	@Override
	public void handle(HttpServletRequest request, HttpServletResponse response, OneTimeToken token)
			throws IOException {
		String email = token.getUsername();
		if (this.arrivals.welcome(email)) {
			String link = link(token);
			if (canSend()) {
				send(email, "Your link to Leafward", """
						Somebody, most likely you, wants to sign in to Leafward with this address.

						Follow this link and press the button there. It works once, for %d minutes:

						%s

						Was it not you? Then leave it: without the link nobody gets in, and we write nothing else.
						""".formatted(OneTimeLinks.SIGN_IN.toMinutes(), link));
			}
			else if (this.demo) {
				request.getSession().setAttribute(SHOWN, link);
			}
		}
		response.sendRedirect(request.getContextPath() + "/sign-in/sent");
	}

	@Override
	public Outcome ask(PersonId person, String email) {
		String address = EmailAddress.read("email", email);
		if (!canSend()) {
			return Outcome.NO_MAIL_SERVER;
		}
		OneTimeToken token = this.links.confirming(address, person);
		send(address, "Do you want mail from Leafward?", """
				Somebody, most likely you, gave this address to Leafward, a calendar for the care of plants, to manage
				a calendar and to be reminded of what is due.

				If that is right, follow this link within %d days and press the button there. It works once:

				%s

				Otherwise leave it: we send nothing more to this address.
				""".formatted(OneTimeLinks.CONFIRM.toDays(), link(token)));
		return Outcome.SENT;
	}

	private String link(OneTimeToken token) {
		return this.baseUrl + "/sign-in/once?token=" + token.getTokenValue();
	}

	private void send(String email, String subject, String text) {
		String name = this.people.withAddress(email).map(Person::name).orElse("");
		this.letters.stream()
			.filter(Letters::canSend)
			.findFirst()
			.ifPresent((mail) -> mail.send(new Letter(email, name, subject, text)));
	}

}
