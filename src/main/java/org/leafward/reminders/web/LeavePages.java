package org.leafward.reminders.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.leafward.language.Phrasebooks;
import org.leafward.measure.NotThere;
import org.leafward.reminders.Series;
import org.leafward.reminders.Wishes;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.links.Leaving;
import org.leafward.reminders.links.SignedLinks;
import org.leafward.reminders.links.StopLink;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/**
 * Leaving a series of messages without signing in. A mail service may do it for somebody
 * by one request (RFC 8058): a form in any encoding, without cookies, that is answered
 * with 200. What the form holds makes no difference, so it isn't read.
 */
@Controller
class LeavePages {

	private final SignedLinks links;

	private final Leaving leaving;

	private final ObjectProvider<Channel> channels;

	private final Phrasebooks books;

	LeavePages(SignedLinks links, Leaving leaving, ObjectProvider<Channel> channels, Phrasebooks books) {
		this.links = links;
		this.leaving = leaving;
		this.channels = channels;
		this.books = books;
	}

	/** No search engine keeps such a page, whatever it answers. */
	@ModelAttribute
	void hide(HttpServletResponse response) {
		response.setHeader("X-Robots-Tag", "noindex, nofollow");
	}

	@GetMapping("/u/{token}")
	String look(@PathVariable String token, Model model) {
		return show(token, require(token), "", model);
	}

	@PostMapping("/u/{token}")
	String leave(@PathVariable String token, Model model) {
		StopLink link = require(token);
		return show(token, link,
				this.leaving.leave(link) ? "You have left these messages. None of them goes out to you any more."
						: "You had left these messages before. None of them goes out to you.",
				model);
	}

	@PostMapping("/u/{token}/back")
	String back(@PathVariable String token, Model model) {
		StopLink link = require(token);
		return show(token, link, this.leaving.comeBack(link) ? "You are back. These messages go out to you again."
				: "These messages go out to you.", model);
	}

	private StopLink require(String token) {
		return this.links.readStop(token)
			.orElseThrow(() -> new NotThere("There is no such link. Copy the whole address from the message."));
	}

	private String show(String token, StopLink link, String said, Model model) {
		Optional<Wishes> how = this.leaving.wishes(link);
		LinkWords words = LinkWords.of(this.books, how.orElse(Wishes.USUAL).speech());
		model.addAttribute("section", "");
		model.addAttribute("token", token);
		model.addAttribute("words", words);
		model.addAttribute("there", how.isPresent());
		model.addAttribute("left", this.leaving.left(link));
		model.addAttribute("series", words.say(words(link.series())));
		model.addAttribute("caution", caution(link.series()).map(words::say).orElse(null));
		model.addAttribute("channel", words.say(channel(link.channel())));
		model.addAttribute("said", words.say(said));
		return "reminders/leave";
	}

	private static Optional<String> caution(Series series) {
		return Optional.ofNullable(switch (series) {
			case TONIGHT -> "Without them nobody warns you of a night that can kill what isn't covered.";
			case ADVISORY -> "Without them you hear of a freeze or a hot wind in your county only where you look.";
			default -> null;
		});
	}

	private String channel(String code) {
		return this.channels.orderedStream()
			.filter((one) -> one.code().equals(code))
			.map(Channel::words)
			.findFirst()
			.orElse(code);
	}

	private static String words(Series series) {
		return switch (series) {
			case MORNING -> "What falls on a morning, once a day at most";
			case OUTLOOK -> "The weekly outlook";
			case TONIGHT -> "Warnings of a night that needs covers";
			case SINGLE -> "Messages about one thing each";
			case ADVISORY -> "Advisories for where you garden";
		};
	}

}
