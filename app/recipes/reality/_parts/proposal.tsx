import { randomUUID } from "node:crypto";
import { answerProposal } from "../actions";
import { type ProposalOf, proposalReasons, proposalTitle } from "../proposal-words";
import { ProposalForm } from "./proposal-form";
import styles from "./reality.module.css";

/** One proposal of the counts, with its reasons and the three answers. */
export function Proposal(of: ProposalOf) {
  const { supply, proposal, steps } = of;
  const { stepKeys, usesAbout } = proposal;
  const title = proposalTitle(of);
  const card = steps.get(stepKeys[0] ?? "")?.recipe;
  const isOneStep = stepKeys.length === 1 && usesAbout > 0;
  const editHref =
    isOneStep || card === undefined ? null : `/recipes/${card.itemTypeId}/edit?style=${card.style}`;
  const asked = { id: randomUUID(), supplyId: supply.id, stepKeys: [...stepKeys], about: usesAbout };
  return (
    <li className={styles.row}>
      <p className={styles.line}>
        <strong className={styles.name}>{title}.</strong>
      </p>
      <p className={styles.small}>{proposalReasons(of).join(" ")}</p>
      <ProposalForm action={answerProposal.bind(null, asked)} label={title} editHref={editHref} />
    </li>
  );
}
