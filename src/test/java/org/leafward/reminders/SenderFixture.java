package org.leafward.reminders;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.support.StaticListableBeanFactory;
import org.springframework.mail.javamail.JavaMailSenderImpl;

/** Mail clients for tests, as Spring Boot would make them. */
public final class SenderFixture {

	private SenderFixture() {
	}

	public static ObjectProvider<JavaMailSenderImpl> to(int port) {
		return of(client(port));
	}

	public static JavaMailSenderImpl client(int port) {
		JavaMailSenderImpl sender = new JavaMailSenderImpl();
		sender.setHost("127.0.0.1");
		sender.setPort(port);
		for (String timeout : new String[] { "connectiontimeout", "timeout", "writetimeout" }) {
			sender.getJavaMailProperties().setProperty("mail.smtp." + timeout, "10000");
		}
		return sender;
	}

	public static ObjectProvider<JavaMailSenderImpl> of(JavaMailSenderImpl sender) {
		StaticListableBeanFactory beans = new StaticListableBeanFactory();
		beans.addBean("mailSender", sender);
		return beans.getBeanProvider(JavaMailSenderImpl.class);
	}

	public static ObjectProvider<JavaMailSenderImpl> none() {
		return new StaticListableBeanFactory().getBeanProvider(JavaMailSenderImpl.class);
	}

}
