package boughwright.counter;

import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import boughwright.text.Language;
import boughwright.text.Text;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.mail.MailException;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.mail.javamail.MimeMessageHelper;
import org.springframework.stereotype.Component;

/**
 * The shopping list and the private link by e-mail, through the shop's own mail server if it has set one ({@code spring.mail.host} and its
 * like, {@code boughwright.mail.from}). The address is used once and kept nowhere, nor written into the log.
 */
@Component
public class PlanMail {

    private static final Logger LOG = LoggerFactory.getLogger(PlanMail.class);
    /** The longest address that the protocol takes: RFC 5321, 4.5.3.1.3, less its brackets. */
    private static final int LONGEST_ADDRESS = 254;

    private final Optional<JavaMailSender> server;
    private final String from;

    PlanMail(ObjectProvider<JavaMailSender> server, @Value("${boughwright.mail.from:}") String from) {
        this.server = Optional.ofNullable(server.getIfAvailable());
        this.from = from.strip();
    }

    /** What came of it. */
    public enum Sent { SENT, NOT_SET, BAD_ADDRESS, FAILED }

    /** Whether the shop sends any. */
    public boolean available() {
        return server.isPresent() && !from.isEmpty();
    }

    /**
     * Sends the list in the language that is spoken.
     *
     * @param to one plain address
     * @param link to the page to follow at home, whole
     */
    public Sent send(String to, Proposal proposal, String spoken, String link) {
        if (!available()) {
            return Sent.NOT_SET;
        }
        Optional<InternetAddress> address = address(to);
        if (address.isEmpty()) {
            return Sent.BAD_ADDRESS;
        }
        try {
            MimeMessage message = server.get().createMimeMessage();
            MimeMessageHelper parts = new MimeMessageHelper(message, StandardCharsets.UTF_8.name());
            parts.setFrom(from);
            parts.setTo(address.get());
            parts.setSubject(Text.of("mail.subject", proposal.edition().shop(), spoken));
            parts.setText(text(proposal, spoken, link));
            message.setHeader("Content-Language", Language.now().tag());
            server.get().send(message);
            return Sent.SENT;
        } catch (MessagingException | MailException e) {
            // Its words may name the address.
            LOG.warn("A shopping list could not be sent: {}", e.getClass().getSimpleName());
            return Sent.FAILED;
        }
    }

    private static String text(Proposal proposal, String spoken, String link) {
        StringBuilder text = new StringBuilder();
        text.append(Text.of("mail.hello", proposal.edition().shop(), spoken)).append("\n\n");
        for (PickList.Row row : PickList.rows(proposal)) {
            text.append(Text.of("mail.line", String.valueOf(row.packs()), row.name(), row.shelf(),
                    proposal.kit().lines().stream().filter(l -> l.sku().equals(row.sku())).findFirst().orElseThrow().unitPrice().times(row.packs()).show())).append('\n');
        }
        text.append('\n').append(Text.of("mail.total", proposal.kit().total().show())).append("\n\n").append(Text.of("mail.link", link)).append("\n\n")
                .append(Text.of("mail.once")).append('\n');
        return text.toString();
    }

    /** One address and nothing that a line of a message's head could be broken with. */
    private static Optional<InternetAddress> address(String typed) {
        String plain = typed.strip();
        if (plain.length() > LONGEST_ADDRESS || plain.chars().anyMatch(c -> c < ' ' || c == ',' || c == ';') || !plain.matches("[^\\s@]+@[^\\s@]+\\.[^\\s@]+")) {
            return Optional.empty();
        }
        try {
            InternetAddress address = new InternetAddress(plain, true);
            return Optional.of(address);
        } catch (AddressException e) {
            return Optional.empty();
        }
    }
}
