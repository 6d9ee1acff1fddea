using PlotAgronomy.Record;
using PlotAgronomy.Record.Examples;
using PlotAgronomy.Record.Plans;
using PlotAgronomy.Record.Sums;

IRecordedPart[] parts = [new PlansPart(args.Contains(RecordCommand.Written)), new SumsPart(), new ExamplesPart()];

return RecordCommand.Run(parts, args, Console.Out);
