#:project ../../src/PlotAgronomy/PlotAgronomy.csproj

// How far must the gate of a shoulder spreader be open for white clover? A bucket, a scale, a stopwatch and a tape tell.
using PlotAgronomy;
using PlotAgronomy.Spreading;
using UnitsNet;

var wanted = ApplicationRate.FromPoundsPerAcre(8);
var swath = Length.FromFeet(15);
var (taped, walked) = (Length.FromFeet(100), TimeSpan.FromSeconds(23));
var pace = WalkingPace.Over(taped, walked);
var errors = new MeasuringErrors
{
    Scale = Mass.FromOunces(0.1),
    Time = TimeSpan.FromSeconds(0.5),
    Swath = Length.FromFeet(1),
    Pace = WalkingPace.ErrorOver(taped, walked, TimeSpan.FromSeconds(1)),
};

// Caught in the bucket in 30 seconds: three times at setting 3, once below and once above it.
(double Setting, double Ounces)[] weighings = [(2, 3.9), (3, 6.2), (3, 6.4), (3, 6.6), (4, 10.3)];
var catches = weighings.Select(w => (w.Setting, Run: Caught(w.Ounces))).ToList();
Console.WriteLine($"Walking {Amounts.Print(pace, "mph", 2)}, passes {Amounts.Print(swath, "ft", 0)} apart:");
foreach (var (setting, run) in catches)
{
    string caught = $"setting {Amounts.Print(setting, 1)}: {Amounts.Print(run.Weighed, "oz", 1)}";
    Console.WriteLine($"  {caught} are {Amounts.Print(run.Rate, decimals: 1)}, {run.Error}");
}

var gate = GateTable.FromPoints("white clover", [.. catches.Select(c => GatePoint.FromFlow(c.Setting, c.Run.Flow!.Value))]);
Console.WriteLine("\nWhat the gate lets through:");
foreach (double setting in new[] { 2, 2.5, 3, 3.5, 4 })
{
    var flow = gate.FlowAt(setting).Flow!.Value;
    var rate = SpreaderSetting.FromFlow(flow, pace, swath).Rate;
    string number = Amounts.Print(setting, 1);
    Console.WriteLine($"  {number,3}  {Amounts.Print(flow, "lb/min", 2),11}  {Amounts.Print(rate, decimals: 1),10}");
}

var atThree = catches.Where(c => c.Setting == 3).Select(c => c.Run);
var outcome = CalibrationOutcome.For(wanted, swath, pace, [.. atThree], gate, setting: 3);
var (low, high) = (Amounts.Print(outcome.ExpectedLow, decimals: 1), Amounts.Print(outcome.ExpectedHigh, decimals: 1));
Console.WriteLine($"\nFor {wanted} open the gate to {Amounts.Print(outcome.Gate!.Setting!.Value, 2)}");
Console.WriteLine($"and aim for {Amounts.Print(outcome.WeightWanted, "oz", 1)} in the bucket,");
Console.WriteLine($"or leave it at 3 and walk 100 ft in {Amounts.Print(outcome.AtThisGate.TimePer100Feet, "s", 1)}.");
Console.WriteLine($"Then {low} to {high} fall; what is known least is the {outcome.MeasuringError.Largest!.Measurement}.");
foreach (var finding in outcome.Findings)
{
    Console.WriteLine(finding);
}

MeasuredRate Caught(double ounces) =>
    MeasuredRate.TimedCatch(Mass.FromOunces(ounces), TimeSpan.FromSeconds(30), pace, swath, errors);
