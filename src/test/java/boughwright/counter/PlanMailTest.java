package boughwright.counter;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.KioskFixture;
import boughwright.needs.Adjustments;
import boughwright.proposal.Designer;
import boughwright.proposal.Outcome;
import boughwright.proposal.PickList;
import boughwright.proposal.Proposal;
import boughwright.text.Language;
import boughwright.text.Text;
import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetupTest;
import jakarta.mail.internet.MimeMessage;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.mail.javamail.JavaMailSender;
import org.springframework.mail.javamail.JavaMailSenderImpl;

/** Against GreenMail, a mail server of another make (RFC 5321). */
@ExtendWith(OutputCaptureExtension.class)
class PlanMailTest {

    @RegisterExtension
    private static final GreenMailExtension SERVER = new GreenMailExtension(ServerSetupTest.SMTP.dynamicPort());

    private static final String LINK = "https://trees.example/at-home/00112233445566778899aabbccddeeff";
    private static final Proposal PROPOSAL = ((Outcome.Made) KioskFixture.designer().propose("{\"tree\": {\"height\": \"7 ft 6 in\"}}", Adjustments.NONE, Designer.SEED)).proposal();

    private static ObjectProvider<JavaMailSender> provider(JavaMailSender sender) {
        return new ObjectProvider<>() {
            @Override
            public JavaMailSender getIfAvailable() {
                return sender;
            }

            @Override
            public JavaMailSender getObject() {
                return sender;
            }

            @Override
            public Stream<JavaMailSender> stream() {
                return Stream.ofNullable(sender);
            }
        };
    }

    private static PlanMail mail(int port) {
        JavaMailSenderImpl sender = new JavaMailSenderImpl();
        sender.setHost("127.0.0.1");
        sender.setPort(port);
        return new PlanMail(provider(sender), "trees@shop.example");
    }

    @Test
    void the_shopping_list_and_the_private_link_arrive_in_the_language_that_is_spoken() throws Exception {
        assertThat(Text.in(Language.GERMAN, () -> mail(SERVER.getSmtp().getPort()).send("kim@home.example", PROPOSAL, "KELP 4 MOSS", LINK))).isEqualTo(PlanMail.Sent.SENT);

        MimeMessage arrived = SERVER.getReceivedMessages()[0];
        assertThat(arrived.getAllRecipients()).extracting(Object::toString).containsExactly("kim@home.example");
        assertThat(arrived.getHeader("Content-Language")).containsExactly("de");
        String text = (String) arrived.getContent();
        assertThat(text).contains(LINK);
        PickList.rows(PROPOSAL).forEach(row -> assertThat(text).contains(row.name()).contains(row.shelf()));
        assertThat(GreenMailUtil.getWholeMessage(arrived)).contains("KELP 4 MOSS");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "kim", "kim@", "kim@home.example, eve@elsewhere.example", "kim@home.example\r\nBcc: eve@elsewhere.example", "kim @home.example", "kim@home"})
    void what_is_no_single_address_is_refused_and_nothing_is_sent(String typed) {
        assertThat(mail(SERVER.getSmtp().getPort()).send(typed, PROPOSAL, "KELP 4 MOSS", LINK)).isEqualTo(PlanMail.Sent.BAD_ADDRESS);
        assertThat(SERVER.getReceivedMessages()).isEmpty();
    }

    @Test
    void a_server_that_is_away_is_told_and_the_address_is_not_in_the_log(CapturedOutput output) {
        assertThat(mail(1).send("kim@home.example", PROPOSAL, "KELP 4 MOSS", LINK)).isEqualTo(PlanMail.Sent.FAILED);
        assertThat(output.getAll()).doesNotContain("kim@home.example");
    }

    @Test
    void a_shop_that_has_set_no_server_offers_none() {
        assertThat(new PlanMail(provider(null), "trees@shop.example").available()).isFalse();
        assertThat(new PlanMail(provider(new JavaMailSenderImpl()), "").available()).isFalse();
    }
}
