namespace PlotAgronomy.Seeds;

/// <summary>One component of a tag while it is being read.</summary>
internal sealed class TagEntry
{
    internal CropKind? Kind { get; set; }

    /// <summary>What is wrong with a name that fits several kinds.</summary>
    internal string? Unclear { get; set; }

    internal string? Variety { get; set; }

    internal string? Origin { get; set; }

    internal TestMonth? Test { get; set; }

    internal Dictionary<TagPart, double> Percent { get; } = [];

    /// <summary>Percentages up to here look like parts of one.</summary>
    internal static double FractionHigh => SeedConstants.All["tag-fraction-high"];

    internal bool IsEmpty => Kind is null && Percent.Count == 0;

    /// <summary>A printed total this close to a sum of parts is that sum.</summary>
    private static double TotalTolerance => SeedConstants.All["tag-total-tolerance"];

    /// <summary>Makes the component, or says what is missing.</summary>
    internal TagComponent? Finish(double coatingPercent, TagRemarks remarks, List<string> problems)
    {
        string name = Kind?.ShortName ?? "a component";
        if (Kind is null)
        {
            problems.Add(Unclear ?? "A component names no kind: write 'Kind: ...' or its name on the line of its percentages.");
        }

        if (!Percent.TryGetValue(TagPart.Pure, out double pure) || pure <= 0)
        {
            problems.Add($"No pure seed is given for {name}.");
        }

        double hard = Percent.GetValueOrDefault(TagPart.Hard);
        double dormant = Percent.GetValueOrDefault(TagPart.Dormant);
        double? total = Percent.TryGetValue(TagPart.Total, out double t) ? t : null;
        if (!Percent.TryGetValue(TagPart.Germination, out double germination))
        {
            if (total is null)
            {
                problems.Add($"No germination is given for {name}.");
                return null;
            }

            germination = total.Value - hard - dormant;
            remarks.Assume(() =>
                hard + dormant > 0
                    ? $"germination of {name} is the total of {Text(total.Value)} % less its hard and dormant seed"
                    : $"the total of {Text(total.Value)} % stands for the germination of {name}; it may hold hard seed"
            );
        }
        else if (total is { } sum && !Percent.ContainsKey(TagPart.Hard) && sum > germination + dormant + TotalTolerance)
        {
            hard = sum - germination - dormant;
            remarks.Assume(() => $"hard seed of {name} is the total of {Text(sum)} % less germination: {Text(hard)} %");
        }
        else if (total is { } printed && Math.Abs(printed - germination - hard - dormant) > TotalTolerance)
        {
            bool inside = Math.Abs(printed - germination) <= TotalTolerance && hard + dormant > 0;
            germination = inside ? germination - hard - dormant : germination;
            remarks.Assume(() =>
                inside
                    ? $"the germination printed for {name} already counts its hard and dormant seed, since it equals the "
                        + $"total; {Text(germination)} % germinates"
                    : $"the total of {Text(printed)} % of {name} is not its germination + hard + dormant; the total is left aside"
            );
        }

        if (germination < 0 || germination + hard + dormant > 100 + SeedTag.SumTolerancePercent)
        {
            problems.Add(
                $"Germination + hard + dormant seed of {name} is {Text(germination + hard + dormant)} %, more than all its "
                    + "seeds: is the germination printed a total?"
            );
        }
        else if (pure + coatingPercent > 100 + SeedTag.SumTolerancePercent)
        {
            problems.Add(
                $"Pure seed + coating of {name} is {Text(pure + coatingPercent)} % of the bag: is that the purity before coating?"
            );
        }

        double living = pure * (germination + hard + dormant) / 100;
        if (
            Percent.TryGetValue(TagPart.PureLive, out double printedLiving)
            && Math.Abs(printedLiving - living) > SeedConstants.All["tag-pure-live-tolerance"]
        )
        {
            remarks.PureLiveDiffers(printedLiving, living, name);
        }

        return problems.Count > 0
            ? null
            : new TagComponent
            {
                Kind = Kind!,
                Variety = Variety,
                Origin = Origin,
                TestMonth = Test,
                Analysis = SeedAnalysis.FromFractions(
                    Fraction.FromPercent(pure),
                    Fraction.FromPercent(germination),
                    Fraction.FromPercent(hard),
                    Fraction.FromPercent(dormant),
                    Fraction.FromPercent(coatingPercent)
                ),
            };
    }

    /// <summary>Asks after figures that look like parts of one where a percentage belongs.</summary>
    internal void AskForPercent(bool isAlone, List<string> problems)
    {
        foreach (var part in (TagPart[])[TagPart.Pure, TagPart.PureLive, TagPart.Germination, TagPart.Total])
        {
            bool mayBeSmall = part is TagPart.Pure or TagPart.PureLive && !isAlone;
            if (!mayBeSmall && Percent.TryGetValue(part, out double percent) && percent > 0 && percent <= FractionHigh)
            {
                problems.Add(
                    $"The {TagPartWords.All[part]} of {Kind?.ShortName ?? "a component"} is given as {Text(percent)} %: is "
                        + $"{Text(percent * 100)} % meant? Write every part in percent."
                );
            }
        }
    }

    internal static string Text(double percent) => Amounts.Print(percent, 2);
}
