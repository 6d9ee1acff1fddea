using System.Globalization;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class PassWorkedExamples
{
    private const string File = "Spreading/worked-passes.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(File);

    [Theory, MemberData(nameof(Ids))]
    public void Matches_the_answer_worked_apart(string id)
    {
        var row = WorkedExamples.Find(File, id);
        WorkedExamples.AssertMatches(row, Answer(row));
    }

    private static double Answer(CsvRow row)
    {
        string topic = row.Text("topic"), inputs = row.Text("inputs");
        if (topic.StartsWith("odd", StringComparison.Ordinal))
        {
            return Odd(topic, inputs.Split('|'));
        }

        if (topic.StartsWith("first", StringComparison.Ordinal))
        {
            return FirstPass(topic, inputs);
        }

        double[] x = [.. inputs.Split(';').Select(Number)];
        return topic switch
        {
            "strips" => Plan(x).Passes.Length,
            "spacing" => Plan(x).Spacing.Feet,
            "rate-change" => Plan(x).RateIfGateStays.ChangePercent,
            "path" => Plan(x).Path.Feet,
            "minutes" => Plan(x, speed: x[3]).SpreadingTime.TotalMinutes,
            "lap" => Plan(x, lap: true).LapLength.Feet,
            "inner-passes" => Plan(x, lap: true).Passes.Length,
            "inner-path" => Plan(x, lap: true).Path.Feet - Plan(x, lap: true).LapLength.Feet,
            "edge-passes" => Plan(x, first: FirstPassPlacement.OnEdge).Passes.Length,
            "edge-path" => Plan(x, first: FirstPassPlacement.OnEdge).Path.Feet,
            "edge-outside" => Plan(x, first: FirstPassPlacement.OnEdge).OutsideShare,
            "seed" => Timed(x).Seed.Pounds,
            "refills" => Timed(x).Refills,
            "total-minutes" => Timed(x).TotalTime.TotalMinutes,
            "efficiency" => Timed(x).FieldEfficiency.Value,
            "bucket-pounds" => MeasuredBucket.FromVolume(Volume.FromCubicInches(231 * x[0]), Density.FromPoundsPerCubicFoot(x[1] / (2150.42 / 1728))).Holds.Pounds,
            "bucket-count" => MeasuredBucket.Weighed(Mass.FromPounds(x[1])).Count(Mass.FromPounds(x[0])),
            _ => throw new InvalidOperationException(topic),
        };
    }

    /// <summary>A triangle with half base 12 ft at its half-maximum width of 12 ft; a bell of 5 ft at its own.</summary>
    private static double FirstPass(string topic, string shape)
    {
        bool bell = shape == "gauss";
        var pattern = bell ? SpreadPattern.Bell(Length.FromFeet(5)) : SpreadPattern.Triangle(Length.FromFeet(12), Length.FromFeet(12));
        var swath = Length.FromFeet(bell ? 5 * 2 * Math.Sqrt(2 * Math.Log(2)) : 12);
        var inside = FirstPassEffect.For(pattern, swath, FirstPassPlacement.HalfSpacingInside);
        return topic switch
        {
            "first-edge" => inside.EdgeRate,
            "first-rim" => inside.RimRate,
            "first-lost" => inside.LostPart,
            "first-onedge-lost" => FirstPassEffect.For(pattern, swath, FirstPassPlacement.OnEdge).LostPart,
            "first-onedge-edge" => FirstPassEffect.For(pattern, swath, FirstPassPlacement.OnEdge).EdgeRate,
            _ => throw new InvalidOperationException(topic),
        };
    }

    private static double Odd(string topic, string[] parts)
    {
        var outline = PlotOutline.FromCorners([.. parts[0].Split(';').Select(c => c.Split(' ')).Select(c => PlanePoint.FromFeet(Number(c[0]), Number(c[1])))]);
        var plan = FieldPasses.Lay(outline, new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(10),
            Swath = Length.FromFeet(Number(parts[1])),
            Speed = Speed.FromMilesPerHour(3),
            Along = parts.Length > 2 ? Bearing.FromDegrees(Number(parts[2])) : null,
        });
        return topic.StartsWith("odd-passes", StringComparison.Ordinal) ? plan.Passes.Length : topic == "odd-outside" ? plan.OutsideShare : plan.Path.Feet;
    }

    /// <summary>Width, length and swath in feet, along the length.</summary>
    private static FieldPasses Plan(double[] x, double speed = 3, bool lap = false, FirstPassPlacement first = FirstPassPlacement.HalfSpacingInside) =>
        FieldPasses.Lay(PlotOutline.Rectangle(Length.FromFeet(x[1]), Length.FromFeet(x[0])), new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(10),
            Swath = Length.FromFeet(x[2]),
            Speed = Speed.FromMilesPerHour(speed),
            Along = Bearing.FromDegrees(90),
            HeadlandLap = lap,
            FirstPass = first,
        });

    private static FieldPasses Timed(double[] x) =>
        FieldPasses.Lay(PlotOutline.Rectangle(Length.FromFeet(x[1]), Length.FromFeet(x[0])), new FieldPassesRequest
        {
            Rate = ApplicationRate.FromPoundsPerAcre(x[6]),
            Swath = Length.FromFeet(x[2]),
            Speed = Speed.FromMilesPerHour(x[3]),
            TurnTime = TimeSpan.FromSeconds(x[4]),
            RefillTime = TimeSpan.FromSeconds(x[5]),
            HopperHolds = Mass.FromPounds(x[7]),
        });

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
