using System.Collections.Immutable;

namespace PlotAgronomy.Weather;

/// <summary>The surface layer day by day.</summary>
internal static class SeedbedTrack
{
    /// <summary>One day's weather as the layer sees it, in mm.</summary>
    internal readonly record struct Step(DateOnly Date, double Rain, double Reference, double GreatestCoefficient);

    internal static ImmutableArray<SeedbedDay> Run(
        IEnumerable<Step> steps,
        double readily,
        double total,
        double before,
        double basal,
        double exposed = 1
    )
    {
        var days = ImmutableArray.CreateBuilder<SeedbedDay>();
        double depletion = before;
        foreach (var step in steps)
        {
            double start = SeedbedMath.StartDepletion(depletion, step.Rain);
            double reduction = SeedbedMath.Reduction(total, readily, start);
            double coefficient = SeedbedMath.EvaporationCoefficient(reduction, step.GreatestCoefficient, basal, exposed);
            double evaporation = SeedbedMath.Evaporation(coefficient, step.Reference, total, start, exposed);
            double end = SeedbedMath.EndDepletion(start, evaporation, exposed);
            days.Add(
                new()
                {
                    Date = step.Date,
                    RainMillimeters = step.Rain,
                    ReferenceMillimeters = step.Reference,
                    BeforeMillimeters = depletion,
                    StartMillimeters = start,
                    PercolationMillimeters = SeedbedMath.Percolation(step.Rain, depletion),
                    GreatestCoefficient = step.GreatestCoefficient,
                    Reduction = reduction,
                    Coefficient = coefficient,
                    EvaporationMillimeters = evaporation,
                    EndMillimeters = end,
                }
            );
            depletion = end;
        }

        return days.ToImmutable();
    }
}
