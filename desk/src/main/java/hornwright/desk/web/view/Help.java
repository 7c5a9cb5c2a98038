package hornwright.desk.web.view;

import java.util.List;

/**
 * What a page is for, in six lines at most.
 *
 * @param question the one question it answers
 * @param needs what one needs in the hand
 * @param decides what follows from the answer
 * @param wrong what often goes wrong
 */
public record Help(String question, String needs, String decides, List<String> wrong) {
    public Help {
        wrong = List.copyOf(wrong);
    }
}
