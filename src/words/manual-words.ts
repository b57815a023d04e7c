import { inLanguage } from './language.ts';

/** The short manual: its chapters in the order of the job, each with what its picture shows and where it leads. */
export const manualWords = inLanguage('manualWords', {
  lead: 'In the order of the job. The pictures are of the demo shop.',
  contents: 'Contents',
  toContents: 'Contents',
  cautionTitle: 'Caution',
  caution:
    'Turning, dust, glue and finishes can hurt people. The cautions here are the usual ones (common practice): your local codes, safety data sheets and licensed advice rule.',
  chapters: {
    start: {
      title: 'First start',
      text: [
        'New shop begins with a route for turned handles, from kitting the parts to the photograph. Change it in Set-up, Route, also while a batch runs.',
        'Set-up then leads to the first tray: a wood, a ferrule, a variant.',
        'The demo shop is a store of its own: try everything there, nothing in it touches your shop.',
        'Add the app to the home screen; from the second visit on it opens without a network.',
      ],
      picture: 'The first screen: New shop, Restore, Join other tablets and Demo shop.',
      go: 'Open the route',
    },
    variants: {
      title: 'Woods, parts, variants',
      text: [
        'Add your woods from the list, which brings the grain and the usual cautions, or as woods of your own.',
        'Parts are what goes into a piece beside its wood: a metal core, a ferrule, a consumable.',
        'A variant is what a customer buys: a pattern in one wood with one ferrule, with the parts of one piece and two prices, for firsts and for seconds.',
        'What you no longer make is put away, never deleted.',
      ],
      caution:
        'The dust of any wood can harm lungs, nose and skin, that of some woods more. The wood’s safety data sheet rules.',
      picture: 'A list of variants, each named by its pattern, its wood with drawn grain, and its ferrule.',
      go: 'Open the variants',
    },
    trays: {
      title: 'Make up trays',
      text: [
        'Pieces of one variant travel together on a tray. Say what they will be, how many lie on each tray and how many trays there are.',
        'Each tray gets a short code, to chalk on or to print as a label. Its last letter gives a slip away.',
        'A prized piece gets a tray of its own; any tray can be split and joined later.',
      ],
      picture: 'Three trays have been made up; their codes stand there in large letters, to be chalked on.',
      go: 'Make up trays',
    },
    bench: {
      title: 'Tap at the bench',
      text: [
        'Choose your stage, then a tray: the one that waits longest comes first. Each good piece is one touch of Pass; where a whole tray is done together, several at once.',
        'A tap counts once Saved stands there.',
        'Undo takes back tap after tap, and an undo can be put back.',
        'Hold back a piece that you are not sure of: leave it untapped, and it waits at this stage.',
      ],
      caution:
        'At the lathe: face shield on, sleeves and hair tied back, no gloves and no rings. Dust extraction and mask on. Stop the lathe before you touch the tablet. Your local codes rule.',
      picture:
        'The screen of a stage: the code of the tray, the pieces left, a large Pass button, buttons for flaws, and Undo.',
      go: 'To the bench',
    },
    flaws: {
      title: 'When a piece has a flaw',
      text: [
        'Tap the reason, then what becomes of the piece: mended it passes on, sent back it goes to an earlier stage, scrapped it is out of the batch, and you say which parts are saved.',
        'A second passes on with a blemish: it goes through the rest of the route, and is counted and priced apart.',
        'A reason without a button stands under Other flaw; your own are added in Set-up.',
      ],
      caution:
        'A piece with a crack or a loose ferrule can fly apart at speed. Do not turn it on; if in doubt, scrap it.',
      picture: 'The question what becomes of a scratched piece: mended, sent back, second or scrap.',
      go: 'Open the flaw reasons',
    },
    curing: {
      title: 'Glue and finish that cure',
      text: [
        'Load a tray where glue or finish cures, and its time begins. Clamps and racks have so many places as you say in Set-up; what does not fit is refused.',
        'The board shows what cures and how long still, to be read across the shop. When a round is ready the tablet calls once, and a tap takes it out.',
        'Say how warm the shop is, and the times follow a rule of thumb; Mix says what to weigh for a round.',
      ],
      caution:
        'The data sheet of the glue or finish rules over any time shown here. Fresh air, gloves on. Oily rags can catch fire by themselves: lay them flat or under water.',
      picture:
        'The board of what cures: one tray is ready, others show the time that is left and their codes.',
      go: 'See what cures',
    },
    check: {
      title: 'Check, grade, raise',
      text: [
        'At a check your own standard stands on the Pass button; write it in Set-up, Stages, with photos of what passes and what does not.',
        'A blemished piece becomes a second, with its reason. Where a tray has firsts and seconds the screen asks which one you tapped.',
        'A second whose blemish was worked out is raised to a first, here or on the shelf. The yields still tell that it was lowered.',
      ],
      picture:
        'The form that raises seconds to firsts: how many are firsts again, and which blemish can be seen no longer.',
      go: 'Open the stages',
    },
    counts: {
      title: 'Check the count',
      text: [
        'Two tablets may tap the same piece, or one gets lost. When more was tapped off than the log had there, the app asks you to check the count: see Day, Counts to check.',
        'Count the pieces by hand. Then open the tray, tap Recount, say how many there are, and why.',
        'The correction is an entry of its own: no tap is changed or dropped.',
      ],
      picture: 'The form of a recount: which pieces, how many are there, and why the count differs.',
      go: 'Counts to check',
    },
    stores: {
      title: 'Stores',
      text: [
        'On hand is what lies there, allotted what the pieces in work will still take, free the rest.',
        'Tap Receive when parts come, Count when you have counted.',
        'A part is used when a piece leaves the stage that fits it; what is saved from scrap waits to be cleaned first.',
        'Below stands what can be started now, and what to order.',
      ],
      picture:
        'Parts in stores with the numbers on hand, allotted and free, and buttons to receive and to count.',
      go: 'Open Stores',
    },
    yield: {
      title: 'Yield and flaws',
      text: [
        'Yield shows where every piece is along the route, and what comes out of each wood.',
        'First-pass yield: of the pieces whose first visit to a stage has ended, those that left it good.',
        'Flaws tells which reason costs most and where. Signals tells which rate has really changed, and since when.',
        'Few pieces tell little: each figure says how sure it is.',
      ],
      picture:
        'The route from top to bottom: at each stage the number of pieces, in bars with the grain of their wood.',
      go: 'Open Yield',
    },
    plan: {
      title: 'Plan and promise',
      text: [
        'Say under Targets what a batch wants and by which day.',
        'Starts tells how many pieces to start, so that enough good ones come out with the chance you want.',
        'Forecast tells by which day all is done, as likely as not or almost surely, and what is safe to promise by a day.',
        'Both learn from your taps and from the hours in Set-up, People. At first the numbers are guesses, and they say so.',
      ],
      picture: 'The forecast: three days by which all is done, from as likely as not to almost sure.',
      go: 'Open the forecast',
    },
    shelf: {
      title: 'Shelf and sheets',
      text: [
        'A piece that has passed the last stage stands on the shelf. Move it when it is listed, sold, given away or kept.',
        'List for sale makes a table of what is there, with its photos, and lists no piece twice.',
        'A sheet for the box tells wood, finish, care and caution. Write the texts in Set-up, Labels; it prints where the labels of trays do.',
      ],
      caution: 'Say on a sheet only what your data sheets bear out, and what your local rules ask.',
      picture:
        'The shelf: how many pieces stand there, are listed, sold, given away and kept, variant by variant.',
      go: 'Open the shelf',
    },
    copies: {
      title: 'Copies, and several tablets',
      text: [
        'A tablet can be lost or break. Save a copy in Set-up, Files, and keep it on another device; the age of the last one is always in view.',
        'Restore adds what a copy has and the shop has not, and takes nothing away.',
        'Other tablets join by a sign that is scanned, and meet through a PC in the shop. Each counts on by itself until they meet.',
      ],
      picture:
        'The copy outside this tablet: none has left it yet; a button saves one, another chooses a folder.',
      go: 'Open Files',
    },
    trouble: {
      title: 'If something goes wrong',
      text: [
        'NOT SAVED: the tap is kept on the screen. Do not close it; tap Try again, or Save a file.',
        'If the app does not open, or a screen cannot be shown, use the rescue page: it works without the app, puts everything in this browser into one file, and changes nothing.',
        'Never clear the data of this site: the records go with it. On a new tablet, begin with Restore.',
      ],
      picture:
        'The rescue page: what it has found in this browser, and the button Save everything to a file.',
      go: 'Rescue page',
    },
  },
});
