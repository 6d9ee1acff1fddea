using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>What a line of a tag says that is no percentage, and what is left of it.</summary>
internal sealed class TagFacts
{
    private TagFacts(string line)
    {
        bool hasPercent = line.Contains('%', StringComparison.Ordinal);
        SaysInoculated = TagText.Inoculated().IsMatch(line);
        if (TagText.LastDay().IsMatch(line) && !hasPercent)
        {
            IsAside = true;
            Rest = "";
            return;
        }

        string rest = TagText.Take(TagText.Noxious(), line, out string? weeds);
        ReadNoxious(weeds);
        rest = TagText.TakeTestMonth(rest, out var test, out string? assumed);
        Test = test;
        if (assumed is not null)
        {
            Assumptions.Add(() => $"the date '{assumed}' is taken as a test of {test}");
        }

        rest = TagText.Take(TagText.NetWeight(), rest, out string? net);
        NetWeight = net is not null && Amounts.TryReadMass(net, out var mass, out _) ? mass : null;
        rest = TagText.Take(TagText.Lot(), rest, out string? lot);
        Lot = lot;
        SaysTreated = TagText.Treated().IsMatch(rest) && !TagText.Untreated().IsMatch(rest);
        if ((SaysInoculated || TagText.Treated().IsMatch(rest)) && !hasPercent)
        {
            Rest = "";
            return;
        }

        rest = TagText.Take(TagText.Kind(), rest, out string? kind);
        Kind = kind;
        rest = TagText.Take(TagText.Variety(), rest, out string? variety);
        Variety = string.IsNullOrEmpty(variety) || TagText.VarietyNotStated().IsMatch(variety) ? null : variety;
        if (rest.Contains(':', StringComparison.Ordinal) || rest.Any(char.IsAsciiDigit))
        {
            rest = TagText.Take(TagText.Origin(), rest, out string? origin);
            Origin = origin;
        }

        Rest = rest;
    }

    /// <summary>Gets what is left of the line.</summary>
    internal string Rest { get; }

    internal bool IsAside { get; }

    internal TestMonth? Test { get; }

    internal Mass? NetWeight { get; }

    internal string? Lot { get; }

    internal string? Kind { get; }

    internal string? Variety { get; }

    internal string? Origin { get; }

    internal bool SaysTreated { get; }

    internal bool SaysInoculated { get; }

    internal List<NoxiousWeed> Noxious { get; } = [];

    internal List<Func<string>> Assumptions { get; } = [];

    internal static TagFacts Of(string line) => new(line);

    private void ReadNoxious(string? weeds)
    {
        if (string.IsNullOrWhiteSpace(weeds) || weeds.Contains("none", StringComparison.OrdinalIgnoreCase))
        {
            return;
        }

        foreach (var (name, count) in NoxiousText.CountsIn(weeds))
        {
            Noxious.Add(new NoxiousWeed { Name = name, SeedsPerPound = count });
            Assumptions.Add(() => $"{Amounts.Print(count, 2)} {name} is a number of seeds per lb");
        }
    }
}
