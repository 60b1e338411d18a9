package org.leafward.reminders.channel.mail;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Hashtable;
import java.util.List;
import javax.naming.Context;
import javax.naming.NameNotFoundException;
import javax.naming.NamingEnumeration;
import javax.naming.NamingException;
import javax.naming.directory.Attribute;
import javax.naming.directory.InitialDirContext;

/**
 * Looks up TXT records by the only resolver that Java has, JNDI, with its DNS provider
 * and no other (RFC 1035 section 3.3.14). A question takes two seconds at most for each
 * name server.
 *
 * @param servers the name servers as JNDI wants them; {@code dns:} for those of the
 * machine
 */
record DnsTexts(String servers) {

	private static final String TIME_OUT_MILLIS = "2000";

	/**
	 * The texts of a name.
	 * @param name a domain name
	 * @return empty when there is no such name or none of its records is a text
	 * @throws IOException if nobody could tell
	 */
	List<String> of(String name) throws IOException {
		try {
			return ask(name);
		}
		catch (NamingException ex) {
			throw new IOException(ex);
		}
	}

	private List<String> ask(String name) throws NamingException {
		// JNDI takes nothing newer.
		Hashtable<String, String> settings = new Hashtable<>();
		settings.put(Context.INITIAL_CONTEXT_FACTORY, "com.sun.jndi.dns.DnsContextFactory");
		settings.put(Context.PROVIDER_URL, this.servers);
		settings.put("com.sun.jndi.dns.timeout.initial", TIME_OUT_MILLIS);
		settings.put("com.sun.jndi.dns.timeout.retries", "1");
		InitialDirContext names = new InitialDirContext(settings);
		try {
			Attribute texts = names.getAttributes(name, new String[] { "TXT" }).get("TXT");
			return (texts != null) ? texts(texts) : List.of();
		}
		catch (NameNotFoundException ex) {
			return List.of();
		}
		finally {
			names.close();
		}
	}

	private static List<String> texts(Attribute found) throws NamingException {
		List<String> texts = new ArrayList<>();
		NamingEnumeration<?> values = found.getAll();
		while (values.hasMore()) {
			// Texts with spaces come in quotes.
			texts.add(String.valueOf(values.next()).replace("\"", ""));
		}
		return texts;
	}

}
