/**
 * Formulas with calls of ours: damaged ones with the formula that each means, or with the reason why none is certain, and
 * sound ones. The forms are those that files without the add-in, other programs and people are known to leave; the meaning
 * of `_xlfn.`, `_xlpm.`, `_xlfn.SINGLE` and `_xlfn.ANCHORARRAY` is that of Microsoft's [MS-XLSX] and support pages.
 */
export interface Damaged {
  readonly now: string;
  /** The formula meant, or what the reason for refusing it says. */
  readonly meant?: string;
  readonly why?: RegExp;
}

const to = (now: string, meant: string): Damaged => ({ now, meant });
const not = (now: string, why: RegExp): Damaged => ({ now, why });

const HEAD = 'WARMBACK.PIPE.HEADLOSS(40,"2 in",100)';
const SPEED = 'WARMBACK.PIPE.VELOCITY(40,"2 in")';

/** What a file keeps when the add-in is missing. */
const STORED: readonly Damaged[] = [
  to('=_xldudf_WARMBACK_PIPE_HEADLOSS(40,"2 in",100)', `=${HEAD}`),
  to('=_XLDUDF_warmback_pipe_headloss(40,"2 in",100)', `=${HEAD}`),
  to('=_xlfn._xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=_xludf.WARMBACK.PIPE.VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=_xlfn.WARMBACK.PIPE.VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=_xldudf_WARMBACK.PIPE.VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=-_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")%', `=-${SPEED}%`),
  to('=IFERROR(_xldudf_WARMBACK_PIPE_HEADLOSS(40,"2 in",100),0)', `=IFERROR(${HEAD},0)`),
  to('=_xldudf_WARMBACK_PIPE_HEADLOSS(40,"2 in",100)+_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=${HEAD}+${SPEED}`),
  to(
    '=_xldudf_WARMBACK_PIPE_HEADLOSS(_xldudf_WARMBACK_REFRIG_PRESSURE("R-32",40),"2 in",100)',
    '=WARMBACK.PIPE.HEADLOSS(WARMBACK.REFRIG.PRESSURE("R-32",40),"2 in",100)',
  ),
  to(
    `=IF('Pool loop'!B3>0,_xldudf_WARMBACK_PIPE_VELOCITY('Pool loop'!B3,"2 in"),"")`,
    `=IF('Pool loop'!B3>0,WARMBACK.PIPE.VELOCITY('Pool loop'!B3,"2 in"),"")`,
  ),
  to(
    '=SUM(Loop[gpm])*_xldudf_WARMBACK_PIPE_VELOCITY([@gpm],"2 in")',
    '=SUM(Loop[gpm])*WARMBACK.PIPE.VELOCITY([@gpm],"2 in")',
  ),
  to(
    '="_xldudf_WARMBACK_PIPE_VELOCITY(1)"&_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")',
    `="_xldudf_WARMBACK_PIPE_VELOCITY(1)"&${SPEED}`,
  ),
  to('=_xldudf_OTHER_FLOW(B3)+_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=_xldudf_OTHER_FLOW(B3)+${SPEED}`),
];

/** A lost book before the name. */
const BOOKS: readonly Damaged[] = [
  to('=[2]!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=[12]!WARMBACK.PIPE.VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=Book.xla!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=tools.xlam!WARMBACK.PIPE.VELOCITY(40,"2 in")', `=${SPEED}`),
  to(`='C:\\Add Ins\\tools.xla'!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")`, `=${SPEED}`),
  to(`='C:\\Bob''s tools\\my add-in.xlam'!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")`, `=${SPEED}`),
  to(`='\\\\server\\share\\tools (2).xlam'!WARMBACK_PIPE_VELOCITY(40,"2 in")`, `=${SPEED}`),
  to(`='https://example.com/a b/tools.xlam'!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")`, `=${SPEED}`),
  to(`='[tools.xlam]Sheet 1'!WARMBACK.PIPE.VELOCITY(40,"2 in")`, `=${SPEED}`),
  to(`='C:\\x\\[tools.xlam]S'!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")`, `=${SPEED}`),
  to('=2*[1]!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=2*${SPEED}`),
  to('=#REF!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=#REF!WARMBACK.PIPE.VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=1+#REF!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=1+${SPEED}`),
  to('=Sheet9!#REF!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=${SPEED}`),
];

/** Excel's own file forms around ours, and the @ of old formulas. */
const PREFIXES: readonly Damaged[] = [
  to('=_xlfn.SINGLE(_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in"))', `=${SPEED}`),
  to('=_xlfn.SINGLE(WARMBACK.PIPE.VELOCITY(40,"2 in"))', `=${SPEED}`),
  to('=SINGLE(WARMBACK.PIPE.VELOCITY(40,"2 in"))*2', `=${SPEED}*2`),
  to('=WARMBACK.PIPE.VELOCITY(_xlfn.SINGLE(B1:B9),"2 in")', '=WARMBACK.PIPE.VELOCITY(@B1:B9,"2 in")'),
  to('=WARMBACK.PIPE.VELOCITY(_xlfn.SINGLE(B1:B9+1),"2 in")', '=WARMBACK.PIPE.VELOCITY(@(B1:B9+1),"2 in")'),
  to('=_xlfn.SINGLE(_xldudf_WARMBACK_CYCLE_STATES("R-410A",45,105))', '=@WARMBACK.CYCLE.STATES("R-410A",45,105)'),
  to('=@_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=${SPEED}`),
  to('= @ [1]!_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', `=  ${SPEED}`),
  to('=@_xldudf_WARMBACK_CYCLE_STATES("R-410A",45,105)', '=@WARMBACK.CYCLE.STATES("R-410A",45,105)'),
  to(
    '=_xlfn.LET(_xlpm.q,40,_xldudf_WARMBACK_PIPE_VELOCITY(_xlpm.q,"2 in"))',
    '=LET(q,40,WARMBACK.PIPE.VELOCITY(q,"2 in"))',
  ),
  to('=LET(_xlpm.q,40,WARMBACK.PIPE.VELOCITY(_xlpm.q,"2 in"))', '=LET(q,40,WARMBACK.PIPE.VELOCITY(q,"2 in"))'),
  to(
    '=_xlfn.MAP(B1:B3,_xlfn.LAMBDA(_xlpm.x,_xldudf_WARMBACK_PIPE_VELOCITY(_xlpm.x,"2 in")))',
    '=MAP(B1:B3,LAMBDA(x,WARMBACK.PIPE.VELOCITY(x,"2 in")))',
  ),
  to(
    '=WARMBACK.PIPE.VELOCITY(_xlfn.XLOOKUP(1,A1:A9,B1:B9),"2 in")',
    '=WARMBACK.PIPE.VELOCITY(XLOOKUP(1,A1:A9,B1:B9),"2 in")',
  ),
  to(
    '=SUM(_xlfn._xlws.FILTER(B1:B9,B1:B9>0))+WARMBACK.PIPE.VELOCITY(40,"2 in")',
    `=SUM(FILTER(B1:B9,B1:B9>0))+${SPEED}`,
  ),
  to('=SUM(_xlfn.ANCHORARRAY(E3))+WARMBACK.PIPE.VELOCITY(40,"2 in")', `=SUM(E3#)+${SPEED}`),
];

/** Typed by hand, or for another country. */
const TYPED: readonly Damaged[] = [
  to('=WARMBACK.PIPE.HEADLOSS(40;"2 in";100)', `=${HEAD}`),
  to('=WARMBACK.PIPE.HEADLOSS(40,5;"2 in";100)', '=WARMBACK.PIPE.HEADLOSS(40.5,"2 in",100)'),
  to('=WARMBACK.PIPE.HEADLOSS(B3*1,5;"2 in";100)', '=WARMBACK.PIPE.HEADLOSS(B3*1.5,"2 in",100)'),
  to('=WARMBACK.PIPE.HEADLOSS(40.5;"2 in";100)', '=WARMBACK.PIPE.HEADLOSS(40.5,"2 in",100)'),
  to('=_xldudf_WARMBACK_PIPE_HEADLOSS(40,25;"2 in";100)', '=WARMBACK.PIPE.HEADLOSS(40.25,"2 in",100)'),
  to('=IF(B1>0,5;WARMBACK.PIPE.VELOCITY(40;"2 in");0)', `=IF(B1>0.5,${SPEED},0)`),
  to('=WARMBACK.PIPE.HEADLOSS(40;"2 in; new";100)', '=WARMBACK.PIPE.HEADLOSS(40,"2 in; new",100)'),
  to('=WARMBACK.PIPE.HEADLOSS(40;"2 in";100;;"25 degC")', '=WARMBACK.PIPE.HEADLOSS(40,"2 in",100,,"25 degC")'),
  to('=SUM({1;2;3})+WARMBACK.PIPE.VELOCITY(1,5;"2 in")', '=SUM({1;2;3})+WARMBACK.PIPE.VELOCITY(1.5,"2 in")'),
  to('=WARMBACK_PIPE_HEADLOSS(40,"2 in",100)', `=${HEAD}`),
  to('=warmback_pipe_velocity(40,"2 in")', `=${SPEED}`),
  to('=WARMBACK.PIPE_VELOCITY(40,"2 in")', `=${SPEED}`),
  to('=WARMBACK.PIPE.VELOCITY (40,"2 in")', `=${SPEED}`),
  to('={WARMBACK.PIPE.VELOCITY(40,"2 in")}', `=${SPEED}`),
  to('{=WARMBACK.PIPE.VELOCITY(40,"2 in")}', `=${SPEED}`),
  to("=WARMBACK.PIPE.VELOCITY(40,\u201c2 in\u201d)", `=${SPEED}`),
];

/** What can't be told. */
const REFUSED: readonly Damaged[] = [
  not("=_xldudf_WARMBACK_NO_SUCH(B1)", /no function WARMBACK\.NO\.SUCH$/),
  not('=_xldudf_WARMBACK_PIPE_HEADLOS(40,"2 in",100)', /is WARMBACK\.PIPE\.HEADLOSS meant/),
  not('=_xldudf_WARMBACK_PIPE_VELOCITY(#REF!,"2 in")', /input is lost/),
  not('=_xldudf_WARMBACK_PIPE_VELOCITY(Sheet9!#REF!,"2 in")', /input is lost/),
  not('=WARMBACK.PIPE.VELOCITY(#REF!,"2 in")', /input is lost/),
  not('=WARMBACK.PIPE.HEADLOSS(40;"2 in",100)', /both commas and semicolons/),
  not('=WARMBACK.PIPE.HEADLOSS(40,5;"2 in";100.5)', /decimal point/),
  not('=WARMBACK.PIPE.HEADLOSS(40,5,2;"2 in";100)', /both commas and semicolons/),
  not('=WENN(B1>0;WARMBACK.PIPE.VELOCITY(40;"2 in");0)', /WENN is no function in English/),
  not('=SUM({1,5;2})+WARMBACK.PIPE.VELOCITY(40;"2 in")', /in braces/),
  not('=WARMBACK.PIPE.VELOCITY(40;"2 in";100;1;2;3;4;5;6)', /takes at most \d+ arguments, here are 9/),
  not('=_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in"', /can't be read/),
  not("=_xldudf_WARMBACK_PIPE_VELOCITY(B1)!!", /can't be read/),
  not('=_xldudf_WARMBACK_PIPE_VELOCITY(_xlnew.THING.X(1),"2 in")', /what _xlnew\.THING\.X means isn't known/),
  not('=_xlfn.ANCHORARRAY(A1+1)+WARMBACK.PIPE.VELOCITY(40,"2 in")', /can't be read/),
];

export const DAMAGED: readonly Damaged[] = [...STORED, ...BOOKS, ...PREFIXES, ...TYPED, ...REFUSED];

/** Formulas that must stay as they are. */
export const SOUND: readonly string[] = [
  `=${HEAD}`,
  `=${SPEED}`,
  '=warmback.pipe.velocity(40,"2 in")',
  '=Warmback.Pipe.Velocity(40,"2 in")',
  `= ${SPEED}`,
  `=${SPEED} `,
  `=+${SPEED}`,
  `=-${SPEED}`,
  `=(${SPEED})`,
  `=${SPEED}*2`,
  `=${SPEED}%`,
  `=2^${SPEED}`,
  `=@${SPEED}`,
  '=@WARMBACK.CYCLE.STATES("R-410A",45,105)',
  '=WARMBACK.CYCLE.STATES("R-410A",45,105)',
  '=INDEX(WARMBACK.CYCLE.STATES("R-410A",45,105),2,3)',
  `=IFERROR(${SPEED},0)`,
  `=IF(B1>0,${SPEED},"")`,
  `=IF(B1>0.5,${HEAD},${SPEED})`,
  `=LET(q,40,WARMBACK.PIPE.VELOCITY(q,"2 in"))`,
  `=LET(warmback_flow,40,WARMBACK.PIPE.VELOCITY(warmback_flow,"2 in"))`,
  '=MAP(B1:B3,LAMBDA(x,WARMBACK.PIPE.VELOCITY(x,"2 in")))',
  '=WARMBACK.PIPE.VELOCITY(B3,"2 in")',
  "=WARMBACK.PIPE.VELOCITY($B$3,B4)",
  `=WARMBACK.PIPE.VELOCITY('Pool loop'!B3,"2 in")`,
  `=WARMBACK.PIPE.VELOCITY('Bob''s loop'!B3,"2 in")`,
  '=WARMBACK.PIPE.VELOCITY(Loop[@gpm],"2 in")',
  "=WARMBACK.PIPE.VELOCITY([@gpm],[@size])",
  '=WARMBACK.PIPE.VELOCITY(SUM(Loop[gpm]),"2 in")',
  '=WARMBACK.PIPE.VELOCITY(Loop[[#This Row],[gpm]],"2 in")',
  '=WARMBACK.PIPE.VELOCITY([1]Prices!B4,"2 in")',
  `=WARMBACK.PIPE.VELOCITY('[Flow data.xlsx]Sheet 1'!B4,"2 in")`,
  '=WARMBACK.PIPE.VELOCITY(E3#,"2 in")',
  '=WARMBACK.PIPE.VELOCITY(@B1:B9,"2 in")',
  "=WARMBACK.PIPE.VELOCITY(Flow,Size)",
  '=WARMBACK.PIPE.VELOCITY(pump_flow,"2 in")',
  '=WARMBACK.PIPE.VELOCITY(40,"2 in",,"SI")',
  '=WARMBACK.PIPE.HEADLOSS(40,"2 in",100,,"25 degC",,,"SI")',
  '=WARMBACK.PIPE.HEADLOSS(40,"2 in; old",100)',
  '=WARMBACK.PIPE.HEADLOSS(40,"2 in",100)&"; done"',
  '=WARMBACK.PIPE.VELOCITY("40,5 gpm","2 in")',
  '=WARMBACK.PIPE.VELOCITY(40,5,"2 in")',
  '=WARMBACK.PIPE.VELOCITY(SUM({1;2;3}),"2 in")',
  '=WARMBACK.PIPE.VELOCITY(SUM({1,2;3,4}),"2 in")',
  '=WARMBACK.PIPE.VELOCITY(SUM({1.5;2}),"2 in")',
  '=WARMBACK.PIPE.VELOCITY(SUM((B1,B2)),"2 in")',
  '=WARMBACK.PIPE.VELOCITY(SUM(S:U!A1),"2 in")',
  '=WARMBACK.PIPE.VELOCITY(INDEX(A:A,3):B9,"2 in")',
  '="=_xldudf_WARMBACK_PIPE_VELOCITY(40)"',
  '="WARMBACK.PIPE.VELOCITY(40;5)"&A1',
  '=LEN("WARMBACK_PIPE_VELOCITY (40)")',
  '=HYPERLINK("https://example.com/warmback_help","help")',
  "=WARMBACK.NOTE.EDITION()",
  "=WARMBACK.NOTE.AGREES(101,100)",
  "=INDEX(WARMBACK.NOTE.AGREES(101,100),1,2)",
  '=WARMBACK.NOTE.WORKING("PIPE.VELOCITY",40,"2 in")',
  '=WARMBACK.REFRIG.PRESSURE("R-32",40)',
  '=WARMBACK.REFRIG.PRESSURE("R-32",WARMBACK.REFRIG.SUPERHEAT("R-410A",130,40))',
  '=WARMBACK.PIPE.VELOCITY(B3 , "2 in")',
  '=\nWARMBACK.PIPE.VELOCITY(\n  B3,\n  "2 in"\n)',
  "=SUM(B1:B9)",
  "=_xldudf_OTHER_POOL_AREA(B1)",
  "=[2]!_xldudf_OTHER_FLOW(B1)",
  "=_xlfn.SINGLE(B1:B9)",
  "=SUM(40;50)",
  "=#REF!+1",
  "=warmback_note",
  "=warmback_note+B1",
];
