import { Component } from 'preact';
import type { ComponentChildren, JSX } from 'preact';
import { Button } from '../parts/button.tsx';
import { Caution } from '../parts/caution.tsx';
import { Page } from '../parts/page.tsx';

interface FaultWallProps {
  readonly children: ComponentChildren;
}

interface FaultWallState {
  readonly fault: string | undefined;
}

/** A fault in one screen stops at this wall: it is said, the other places keep working, nothing entered is lost. */
export class FaultWall extends Component<FaultWallProps, FaultWallState> {
  override state: FaultWallState = { fault: undefined };

  static override getDerivedStateFromError(fault: unknown): FaultWallState {
    return { fault: fault instanceof Error ? fault.message : String(fault) };
  }

  override render(): JSX.Element {
    if (this.state.fault === undefined) return <>{this.props.children}</>;
    return (
      <Page title="This screen stopped">
        <Caution
          words={[
            'A fault in the app stopped this screen. What was recorded is kept.',
            `The fault: ${this.state.fault}`,
          ]}
        />
        <div class="row">
          <Button kind="next" onPress={() => window.location.reload()}>
            Load the app again
          </Button>
          <Button onPress={() => this.setState({ fault: undefined })}>Try this screen again</Button>
        </div>
      </Page>
    );
  }
}
