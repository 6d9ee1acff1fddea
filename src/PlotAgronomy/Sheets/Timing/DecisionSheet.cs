using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Sheets;

/// <summary>Sow now or wait, in words and amounts: the answer, the days, the kinds, the reasons, what waiting costs.</summary>
internal static class DecisionSheet
{
    internal static FieldSheet Write(string plot, PlantingDecision decision)
    {
        var first = decision.Days[0];
        var better = decision.WaitUntil;
        ImmutableArray<SheetSection> sections =
        [
            Answer(decision),
            .. decision.Questions.IsEmpty ? Enumerable.Empty<SheetSection>() : [TimingWords.Questions(decision.Questions)],
            Days(decision),
            KindsSection.Write("kinds", first),
            .. better is null ? Enumerable.Empty<SheetSection>() : [KindsSection.Write("kinds-better", better)],
            Costs(decision),
        ];
        var told = first.Reasons.Concat(better?.Reasons ?? []);
        return SheetEnding.Close(
            $"{plot}: sow now or wait, from {SheetText.Date(first.Date)}",
            sections,
            [.. first.Reasons, .. decision.Findings],
            told
        );
    }

    private static SheetSection Answer(PlantingDecision decision)
    {
        var sheet = new SectionWriter("answer", "Answer");
        var first = decision.Days[0];
        sheet.Say(Now(first));
        if (decision.WaitUntil is { } better)
        {
            sheet.Say($"Better on {SheetText.Date(better.Date)}: {TimingWords.Verdict(better.Verdict)}{Without(better)}.");
        }
        else if (decision.Now != PlantingVerdict.Sow && (decision.JustAheadOfRain is null || decision.JustAheadOfRain == first))
        {
            sheet.Say("No day that this forecast tells is better.");
        }

        if (decision.JustAheadOfRain is { } ahead)
        {
            string worked = decision.Request.WorksTheGround ? ", the last day on which the ground can still be worked dry" : "";
            sheet.Say(
                ahead == first
                    ? $"Just ahead of the rain: that day, {SheetText.Date(ahead.Date)}{worked}."
                    : $"Best just ahead of the rain, on {SheetText.Date(ahead.Date)}{worked}: enough rain is as likely until "
                        + "then, and seed that goes on sooner lies dry for longer."
            );
        }

        if (!decision.IsRainInSight)
        {
            sheet.Say("No rain in sight: half an inch within a week is nowhere as likely as not. Wait for another forecast.");
        }

        sheet.Say(TimeLeft(decision));
        if (first.WouldChangeIt is { Length: > 0 } changes)
        {
            sheet.Say($"What would change it: {string.Join("; ", changes)}.");
        }

        return sheet.Close();
    }

    private static string Now(DecisionDay day) =>
        day.Verdict switch
        {
            PlantingVerdict.Sow => $"Sow on {SheetText.Date(day.Date)}: nothing speaks against it.",
            PlantingVerdict.SowWithCare => $"Sow on {SheetText.Date(day.Date)} with care{Without(day)}: {WhyWithCare(day)}",
            _ => $"Wait: not on {SheetText.Date(day.Date)}. {FirstReason(day)}",
        };

    /// <summary>The most serious reason, and the other kinds that have the same one.</summary>
    private static string FirstReason(DecisionDay day)
    {
        var first = day.Reasons[0];
        var alike = day.Reasons.Where(r => r.Code == first.Code && r.Subject is not null);
        string others = string.Join(", ", alike.Select(r => r.Subject).Distinct().Skip(1));
        return others.Length == 0 ? first.Text : $"{first.Text} The same for {others}.";
    }

    /// <summary>The one kind that is left out was named a word before.</summary>
    private static string WhyWithCare(DecisionDay day) =>
        day.Without.Length == 1 && day.Reasons[0].Subject == SheetText.Name(day.Without[0])
            ? TimingWords.Bare(day.Reasons[0])
            : FirstReason(day);

    private static string Without(DecisionDay day) => day.Without.IsEmpty ? "" : $", without {TimingWords.Names(day.Without)}";

    private static string TimeLeft(PlantingDecision decision)
    {
        if (decision.TimeLeft.IsEmpty)
        {
            return !decision.Dates.OutOfSeason.IsEmpty ? OutOfSeason(decision.Dates)
                : decision.Dates.DropOut.IsEmpty
                    ? "Until when waiting leaves time is not known: no printed dates and no frost are known for this plan."
                : "Waiting leaves no time this season: the last sensible days are past.";
        }

        var last = decision.TimeLeft.Select(k => $"{SheetText.Name(k.Kind)} until {SheetText.Date(k.LastSensible!.Value)}");
        return $"Waiting leaves time: {string.Join(", ", last)}.";
    }

    private static string OutOfSeason(SowingDates dates)
    {
        var again = dates
            .OutOfSeason.Where(k => k.OpensAgain is not null)
            .OrderBy(k => k.OpensAgain)
            .Select(k => $"{SheetText.Name(k.Kind)} on {SheetText.Date(k.OpensAgain!.Value)}")
            .ToList();
        return again.Count == 0
            ? "It is not the season of these kinds."
            : $"It is not the season. Printed dates begin again: {string.Join(", ", again)}.";
    }

    private static SheetSection Days(PlantingDecision decision)
    {
        bool isFrostKnown = decision.Days.Any(d => d.DaysToFrost is not null);
        string always = Without(decision.Days[0]);
        bool isAlways = decision.Days.All(d => Without(d) == always);
        var sheet = new SectionWriter("days", $"The days, {decision.Days[0].Date.Year} [rain of the week that begins on each]");
        sheet.Table(
            [
                "day",
                "rain that day",
                "rain in the week",
                "1/4 in or more, %",
                "1/2 in or more, %",
                "hours until rain",
                "moist days on end",
                "high, low F",
                .. isFrostKnown ? ImmutableArray.Create("days to frost") : [],
                "verdict",
            ],
            decision.Days.Select(d => new SheetRow
            {
                Cells =
                [
                    TimingWords.Day(d.Date),
                    d.Weather.Rain is { } rain ? Amounts.Print(rain, "in", 2) : "-",
                    Amounts.Print(d.Rain.Amount, "in", 2),
                    TimingWords.Percent(d.Little),
                    TimingWords.Percent(d.Enough),
                    TimingWords.Count(d.DryHours, "none told"),
                    TimingWords.Range(d.Kinds.Min(k => k.FewestMoistDays), d.Kinds.Max(k => k.MostMoistDays)),
                    Degrees(d.Weather),
                    .. isFrostKnown ? ImmutableArray.Create(TimingWords.Count(d.DaysToFrost, "not known")) : [],
                    isAlways ? TimingWords.Verdict(d.Verdict) : $"{TimingWords.Verdict(d.Verdict)}{Less(d)}",
                ],
            })
        );
        if (isAlways && always.Length > 0)
        {
            sheet.Say($"On each of these days without {TimingWords.Names(decision.Days[0].Without)}.");
        }

        sheet.Say("Chances are told from the lowest to the highest that the periods of the forecast allow: take both ends.");
        return sheet.Close();
    }

    private static string Less(DecisionDay day) =>
        day.Without.Length switch
        {
            0 => "",
            1 => ", less 1 kind",
            int several => $", less {Amounts.Print(several, 0)} kinds",
        };

    private static string Degrees(WeatherDay day)
    {
        double high = day.High is { } warm ? warm.DegreesFahrenheit : 0;
        double low = day.Low is { } cold ? cold.DegreesFahrenheit : 0;
        return $"{Amounts.Print(high, 0)}, {Amounts.Print(low, 0)}";
    }

    private static SheetSection Costs(PlantingDecision decision)
    {
        var sheet = new SectionWriter("waiting", "What a day of waiting costs");
        if (decision.Costs.IsEmpty)
        {
            sheet.Say("The forecast tells one whole day alone.");
        }

        sheet.Table(
            ["from", "to", "1/2 in if sown", "1/2 in if waited", "drops out", "sprouts and dries if sown", "if waited"],
            decision.Costs.Select(c => new SheetRow
            {
                Cells =
                [
                    TimingWords.Day(c.Go.Date),
                    TimingWords.Day(c.Wait.Date),
                    TimingWords.Chance(c.Go.Enough),
                    TimingWords.Chance(c.Wait.Enough),
                    NamesOrNone(c.DropsOut),
                    NamesOrNone(c.DriesWhenSown),
                    NamesOrNone(c.DriesAfterWaiting),
                ],
            })
        );
        return sheet.Close();
    }

    private static string NamesOrNone(ImmutableArray<CropKind> kinds) => kinds.IsEmpty ? "none" : TimingWords.Names(kinds);
}
