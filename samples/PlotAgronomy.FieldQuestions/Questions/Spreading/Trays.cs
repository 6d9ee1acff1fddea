using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Spreading;

/// <summary>Eleven trays stood two feet apart across one pass; their catches were weighed in grams.</summary>
internal static class Trays
{
    internal static void Answer(TextWriter output)
    {
        var caught = SpreadPattern.FromTrays([0.2, 1.1, 2.6, 4.0, 5.1, 5.4, 4.9, 4.2, 2.4, 1.2, 0.1], Length.FromFeet(2));
        var advice = SwathAdvice.For(caught, DrivingMethod.BackAndForth);
        output.Tell(advice);
        if (advice.Recommended is not { } swath)
        {
            output.WriteLine("No distance of passes is even enough: spread half the rate twice, the second time across.");
            return;
        }

        var ground = OverlappedPattern.For(caught, swath, DrivingMethod.BackAndForth);
        var halves = HalfRateComparison.For(caught, swath, DrivingMethod.BackAndForth);
        var edge = FirstPassEffect.For(caught, swath, FirstPassPlacement.OnEdge);
        output.WriteLine($"Passes {Amounts.Print(swath, "ft", 1)} apart: {ground}.");
        output.WriteLine(halves.HalfSwathIsMoreEven
            ? "Twice at half the rate is evener with passes half as far apart."
            : "Twice at half the rate is evener with the second time at right angles.");
        output.WriteLine($"With the first pass on the edge, {Amounts.Print(100 * edge.LostPart, 0)} % of it falls outside.");
    }
}
