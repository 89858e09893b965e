import { benchJournal } from './journal.ts';

benchJournal();
