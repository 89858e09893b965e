import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Problem } from '#core/problems/problem.ts';
import { Button } from '../../../parts/button.tsx';
import { Caution } from '../../../parts/caution.tsx';
import { List, ListRow } from '../../../parts/list.tsx';
import { Section } from '../../../parts/section.tsx';
import { WhyButton } from '../../../parts/why-button.tsx';
import type { Saved } from '../../../state/open-journal.ts';
import { leaveProposal, takeProposal, weekWatch, type WeekProposal } from '../../../views/week-watch.ts';

const problem = signal<Problem | undefined>(undefined);

/** The week solved again, beside the one that stands: why, what would change, and what is kept. */
export function ProposedWeek(): JSX.Element | null {
  const watch = weekWatch.value;
  if (watch.status !== 'proposed') return null;
  const { because, changes, plan } = watch.proposal;
  return (
    <Section
      title="Solved again"
      action={<WhyButton why={{ title: 'Why this week', sentences: plan.why }}>Why this week?</WhyButton>}
    >
      <div class="stack">
        <p>{because.join(' ')}</p>
        {changes.length === 0 ? (
          <p>What stands is still the best: nothing would change.</p>
        ) : (
          <>
            <p>Taken, it changes this. What stands is below and goes on until then.</p>
            <List label="What would change">
              {changes.map(({ about, sentences }) => (
                <ListRow
                  key={about}
                  title={about}
                  detail={sentences.map((sentence) => (
                    <span key={sentence} class="week-dish">
                      {sentence}
                    </span>
                  ))}
                />
              ))}
            </List>
          </>
        )}
        {problem.value && <Caution title={problem.value.message} words={problem.value.remedy} />}
      </div>
    </Section>
  );
}

/** One tap takes it, one tap leaves what stands. */
export function ProposalActions({ proposal }: { readonly proposal: WeekProposal }): JSX.Element {
  const nothing = proposal.changes.length === 0;
  return (
    <>
      <Button
        kind={nothing ? 'next' : 'plain'}
        records
        wide={nothing}
        onPress={() => void settle(leaveProposal(proposal))}
      >
        {nothing ? 'Keep it so' : 'Leave it'}
      </Button>
      {!nothing && (
        <Button kind="next" records wide onPress={() => void settle(takeProposal(proposal))}>
          Take the new week
        </Button>
      )}
    </>
  );
}

async function settle(saving: Promise<Saved | undefined>): Promise<void> {
  const saved = await saving;
  problem.value = saved?.status === 'refused' ? saved.problem : undefined;
}
