using PlotAgronomy.Record;
using PlotAgronomy.Record.Examples;
using PlotAgronomy.Record.Plans;
using PlotAgronomy.Record.Soak;
using PlotAgronomy.Record.Sums;

if (args is [SoakCommand.Verb, ..])
{
    return SoakCommand.Run(args, Console.Out);
}

IRecordedPart[] parts = [new PlansPart(args.Contains(RecordCommand.Written)), new SumsPart(), new ExamplesPart()];

return RecordCommand.Run(parts, args, Console.Out);
