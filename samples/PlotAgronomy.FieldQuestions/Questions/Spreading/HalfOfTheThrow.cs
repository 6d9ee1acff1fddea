using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Spreading;

/// <summary>A cranked spreader throws oats 12 feet to either side, and nobody has trays to tell the shape in which they
/// fall.</summary>
internal static class HalfOfTheThrow
{
    internal static void Answer(TextWriter output)
    {
        var reach = Length.FromFeet(12);
        (string Name, SpreadPattern Pattern)[] shapes =
        [
            ("a tent", SpreadPattern.Triangle(reach, reach)),
            ("a table with sloping sides", SpreadPattern.Trapezoid(topWidth: reach, baseWidth: 2 * reach)),
            ("a bell with a thin hem", SpreadPattern.Bell(reach / 3)),
            ("a bell that ends", SpreadPattern.RaisedCosine(reach)),
            ("a low dome", SpreadPattern.CosineLobe(reach)),
            ("a full dome", SpreadPattern.Parabola(reach)),
            ("a dome with steep sides", SpreadPattern.SemiEllipse(reach)),
        ];
        var advice = shapes.Select(s => SwathAdvice.For(s.Pattern, DrivingMethod.BackAndForth)).ToList();
        foreach (var ((name, _), told) in shapes.Zip(advice))
        {
            output.WriteLine($"If they fall as {name}: passes up to {Amounts.Print(told.Recommended!.Value, "ft", 1)} apart.");
        }

        output.WriteLine($"Where nobody knows, {Amounts.Print(advice.Min(a => a.Recommended!.Value.Feet), 0)} ft suit them all.");
        output.Warn(advice.SelectMany(a => a.Findings).DistinctBy(f => f.Code));

        // People walk at half of the whole throw.
        foreach (var (name, pattern) in shapes)
        {
            var half = OverlappedPattern.For(pattern, reach, DrivingMethod.BackAndForth);
            if (half.Verdict is not UniformityVerdict.Good)
            {
                output.WriteLine($"At half of the throw {name} leaves {Amounts.Print(half.SampleCvPercent, 0)} % unevenness.");
            }
        }

        // Flung at 30 feet a second from the waist. Dropped from a roof, oats reach about 22 feet a second and clover 13.
        var (flung, waist) = (Speed.FromFeetPerSecond(30), Length.FromFeet(3.5));
        var oats = SpreadPattern.ThrowDistance(flung, terminalVelocity: Speed.FromFeetPerSecond(22), waist);
        var clover = SpreadPattern.ThrowDistance(flung, terminalVelocity: Speed.FromFeetPerSecond(13), waist);
        output.WriteLine($"Oats fly {Amounts.Print(oats, "ft", 0)} and clover {Amounts.Print(clover, "ft", 0)}.");
        output.WriteLine("Sow the clover by itself, with closer passes.");
    }
}
