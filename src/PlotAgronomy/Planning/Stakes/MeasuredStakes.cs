using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What rests on each measured number.</summary>
internal static class MeasuredStakes
{
    internal static ImmutableArray<MeasuredStake> Of(PlotAnswers answers) =>
        [
            .. MeasuredNumbers
                .Of(answers)
                .Take((int)StakeConstants.All["most-inputs"])
                .Select(number =>
                    number is MeasuredNumber.InThePlan solved
                        ? Solved(solved)
                        : Falling(answers, (MeasuredNumber.AtTheSpreader)number)
                )
                .OrderByDescending(s => s.Rank),
        ];

    private static MeasuredStake Solved(MeasuredNumber.InThePlan number)
    {
        var span = new OutcomeSpan([number.Low.Solve(), number.High.Solve()], isMeasured: true);
        return Stake(number, span.Cost, span.Seed, span.InWords);
    }

    /// <summary>The seed that would fall, by the kind of it that is worth most.</summary>
    private static MeasuredStake Falling(PlotAnswers answers, MeasuredNumber.AtTheSpreader number)
    {
        ImmutableArray<SownKind> sown =
        [
            .. (answers.Spreading.OrNull()?.Passes ?? []).Where(number.Touches).SelectMany(p => p.Kinds).OrderByDescending(Worth),
        ];
        decimal worth = sown.Sum(Worth);
        double pounds = sown.Sum(k => k.Weight.Pounds);
        return Stake(
            number,
            (worth * (decimal)number.Least, worth * (decimal)number.Most),
            (Mass.FromPounds(pounds * number.Least), Mass.FromPounds(pounds * number.Most)),
            sown is [var dearest, ..]
                ? $"{Amounts.Print(dearest.Weight.Pounds * number.Least, 1)} to "
                    + $"{Amounts.Print(dearest.Weight.Pounds * number.Most, 1)} lb of {dearest.Planned.Kind.ShortName} fall"
                : ""
        );
    }

    private static decimal Worth(SownKind kind) => kind.Planned.Offer.PricePerPound * (decimal)kind.Weight.Pounds;

    private static MeasuredStake Stake(
        MeasuredNumber number,
        (decimal Low, decimal High) cost,
        (Mass Low, Mass High) seed,
        string atStake
    ) =>
        new()
        {
            Name = number.Name,
            Reading = number.Reading,
            Error = number.Error,
            Origin = number.Origin,
            Cost = cost,
            Seed = seed,
            AtStake = atStake,
        };
}
