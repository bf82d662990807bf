package bandwright.pipeline.approve;

import bandwright.pipeline.held.Question;
import bandwright.pipeline.held.Reason;
import bandwright.rules.orders.OrderField;
import bandwright.rules.words.Words;
import java.util.Optional;

/** Why a row waits for its buyer. */
public sealed interface ApproveReason extends Reason {
    @Override
    default OrderField field() {
        return OrderField.APPROVED;
    }

    /**
     * The buyer has not approved the proof as it is now.
     *
     * @param proof the code of the proof
     * @param given what the row says instead; empty = nothing
     */
    record WaitingForApproval(String proof, String given) implements ApproveReason {
        @Override
        public String code() {
            return "waiting-for-approval";
        }

        @Override
        public String message() {
            return given.isEmpty()
                    ? Words.say("held.waiting-for-approval.message", proof)
                    : Words.say("held.waiting-for-approval.other", proof, given);
        }

        @Override
        public String cure() {
            return Words.say("held.waiting-for-approval.cure", proof);
        }

        @Override
        public Optional<Question> question() {
            return Optional.of(new Question("", Words.say("held.waiting-for-approval.ask", proof)));
        }
    }
}
