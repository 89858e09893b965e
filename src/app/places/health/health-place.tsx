import type { JSX } from 'preact';
import { drawAhead } from '#core/cycle/draw-now.ts';
import type { PlaceProps } from '../../shell/places.ts';
import { today } from '../../state/clock.ts';
import { ledger } from '../../state/open-journal.ts';
import { DrawForm } from './draw-form.tsx';
import { DrawScreen } from './draw-screen.tsx';
import { FhirScreen } from './fhir-screen.tsx';
import { HealthScreen } from './health-screen.tsx';
import { MedicineForm } from './medicine-form.tsx';
import { PanelForm } from './panel-form.tsx';
import { PanelScreen } from './panel-screen.tsx';
import { PhysicianScreen } from './physician-screen.tsx';
import { ProductForm } from './product-form.tsx';
import { ProductScreen } from './product-screen.tsx';
import { RecoveryScreen } from './recovery-screen.tsx';
import { RegimenForm } from './regimen-form.tsx';
import { SumsScreen } from './sums-screen.tsx';
import { SupplementsScreen } from './supplements-screen.tsx';
import { TrendScreen } from './trend-screen.tsx';

/** Supplements, blood, and how one feels. */
export default function HealthPlace({ path }: PlaceProps): JSX.Element {
  const [screen, id = '', step] = path;
  const known = id === 'new' ? undefined : id;
  switch (screen) {
    case 'supplements':
      return <SupplementsScreen />;
    case 'sums':
      return <SumsScreen />;
    case 'label':
      return <ProductForm key={id} supplement={known} />;
    case 'product':
      return <ProductScreen key={id} supplement={id} />;
    case 'regimen':
      return (
        <RegimenForm key={`${id}/${step}`} supplement={id} regimen={step === 'new' ? undefined : step} />
      );
    case 'medicine':
      return <MedicineForm key={id} medicine={known} />;
    case 'panel':
      return id === 'new' || step === 'correct' ? (
        <PanelForm key={id} panel={known} />
      ) : (
        <PanelScreen key={id} panel={id} />
      );
    case 'file':
      return <FhirScreen />;
    case 'trend':
      return <TrendScreen key={id} analyte={id} />;
    case 'sheet':
      return <PhysicianScreen panel={id} />;
    case 'draw':
      return id === 'change' ? (
        <DrawForm draw={drawAhead(ledger.value, today.value)?.data} />
      ) : (
        <DrawScreen />
      );
    case 'recovery':
      return <RecoveryScreen />;
    default:
      return <HealthScreen />;
  }
}
