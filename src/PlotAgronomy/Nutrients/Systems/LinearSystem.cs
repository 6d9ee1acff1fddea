using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>constant + a x yield + b x test + c x yield x test, never negative, with the system's own limit and least
/// rate.</summary>
internal sealed class LinearSystem(SystemRecord record) : RecommendationSystem(record)
{
    private static readonly Table<LinearEquation> Table = new("Nutrients/Data/linear-equations.csv", LinearEquation.FromRow);

    /// <summary>The equations of this system alone.</summary>
    private readonly ImmutableArray<LinearEquation> equations = [.. Table.Rows.Where(e => e.SystemId == record.Id)];

    private protected override SystemAnswer Answer(SystemRequest question, DomainReading reading)
    {
        var equation = EquationFor(question.Crop.Row, reading);
        if (equation.AsksForYield && question.Crop.Yield is null)
        {
            return AskFor(reading.Nutrient, question, _ => "its equation asks for the yield hoped for, and none is assumed");
        }

        double rate = Kernel(question, equation).Rate(reading.Value, 0);
        return new Need(question, reading, equation, rate);
    }

    internal override T UseKernel<T>(SystemRequest question, DomainReading reading, INeedKernelUser<T> user) =>
        user.Use(Kernel(question, EquationFor(question.Crop.Row, reading)));

    private static LinearNeedKernel Kernel(SystemRequest question, LinearEquation equation) =>
        equation.Kernel(question.Crop.Yield?.PerAcre ?? 0);

    private LinearEquation EquationFor(CropRow crop, DomainReading reading)
    {
        foreach (var equation in equations)
        {
            if (
                equation.Crop == crop
                && equation.Nutrient == reading.Nutrient
                && ReportReadings.IsAccepted(reading.Reading.Extractant, equation.Extractants)
            )
            {
                return equation;
            }
        }

        throw new InvalidOperationException($"{Name} has no equation for {reading.Words} on {CropRows.WordsFor(crop)}.");
    }

    private sealed class Need(SystemRequest question, DomainReading reading, LinearEquation equation, double rate)
        : SufficiencyNeed(question, reading, rate, equation.Origin.Status)
    {
        public override string Why
        {
            get
            {
                string forYield = equation.AsksForYield ? $" for a yield of {Crop.Yield}" : "";
                string least =
                    Pounds > equation.Unlimited(Yield, Reading.Value)
                        ? $", and never for less than {Amounts.Print(equation.LeastRate, 4)} lb/ac"
                        : "";
                string end = Reading.Value > equation.ZeroAbove ? "lies above" : "lies at";
                return Pounds == 0
                    ? $"{Reading.Subject} {end} {Reading.Limit(equation.ZeroAbove, 1)}, so none is needed."
                    : $"{Reading.Subject} does not pass {Reading.Limit(equation.ZeroAbove, 1)}, so the equation asks for this "
                        + $"much{forYield}{least}.";
            }
        }

        public override NutrientRating? Rating =>
            Question.System.RatingOn(
                Reading,
                LimitScale.Of(
                    $"{Question.System.Id}-{Crop.Row}-{Reading.Nutrient}",
                    Reading,
                    Crop.Row,
                    CropRows.WordsFor(Crop.Row),
                    equation.Origin,
                    [("responsive", equation.ZeroAbove, true)],
                    "not responsive"
                )
            );

        public override ImmutableArray<Source> Sources => equation.Origin.Sources;

        private CropUse Crop => Question.Crop;

        private double Pounds => Rate.PoundsPerAcre;

        private double Yield => Crop.Yield?.PerAcre ?? 0;

        private protected override WorkedLine Line() =>
            Reading.Value > equation.ZeroAbove
                ? TableEnd.Line(
                    Reading,
                    Math.Round(equation.ZeroAbove, 1, MidpointRounding.AwayFromZero),
                    equation.Origin.FirstSource
                )
                : equation.Line(NutrientInWords, Yield, Reading.Value, Pounds);
    }
}
