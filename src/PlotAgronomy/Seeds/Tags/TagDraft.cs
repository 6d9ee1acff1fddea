using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>A tag while its lines are being read.</summary>
internal sealed class TagDraft(KindCatalog catalog)
{
    private readonly List<TagEntry> entries = [];
    private readonly Dictionary<TagPart, double> bag = [];
    private readonly List<NoxiousWeed> noxious = [];
    private readonly TagRemarks remarks = new();
    private readonly List<string> problems = [];
    private readonly List<TagPart> header = [];
    private TestMonth? test;
    private Mass? netWeight;
    private string? lot;
    private bool treated;
    private bool inoculated;

    internal void Add(string line)
    {
        var facts = TagFacts.Of(line);
        Keep(facts, line);
        string rest = facts.Rest;
        var labels = TagText.LabelsIn(rest);
        var numbers = TagText.NumbersIn(rest);
        if (numbers.FirstOrDefault(n => n.Value > 100) is { Value: > 100 } tooMuch)
        {
            problems.Add($"'{line}': {TagEntry.Text(tooMuch.Value)} is more than 100 %.");
        }
        else if (numbers.Count == 0)
        {
            AddWords(line, rest, labels);
        }
        else if (labels.Count == 0)
        {
            AddRow(line, rest, numbers);
        }
        else
        {
            AddLabelled(line, rest, labels, numbers);
        }

        if (numbers.Any(n => n.Comma))
        {
            remarks.Assume(() => $"the comma in '{line}' is a decimal comma");
        }

        if (entries.Count > 0)
        {
            Current.Variety = facts.Variety ?? Current.Variety;
            Current.Origin = facts.Origin ?? Current.Origin;
            Current.Test = numbers.Count > 0 ? facts.Test ?? Current.Test : Current.Test;
        }
    }

    internal SeedTagReadResult Finish()
    {
        var named = entries.Where(e => !e.IsEmpty).ToList();
        double coating = bag.GetValueOrDefault(TagPart.Coating);
        double inert = bag.GetValueOrDefault(TagPart.Inert);
        double other =
            bag.GetValueOrDefault(TagPart.OtherCrop)
            + bag.GetValueOrDefault(TagPart.Weed)
            + named.Sum(e => e.Percent.GetValueOrDefault(TagPart.Pure));
        if (coating > inert + SeedTag.SumTolerancePercent && bag.ContainsKey(TagPart.Inert))
        {
            remarks.Assume(() =>
                $"the coating of {TagEntry.Text(coating)} % stands beside the inert matter, since it is more than that; it is "
                + "counted into it"
            );
            inert += coating;
        }
        else if (
            coating > 0
            && Math.Abs(100 - other - inert) > SeedTag.SumTolerancePercent
            && Math.Abs(100 - other - inert - coating) <= SeedTag.SumTolerancePercent
        )
        {
            remarks.Assume(() =>
                $"the coating of {TagEntry.Text(coating)} % stands beside the inert matter, since the parts sum to 100 only "
                + "so; it is counted into it"
            );
            inert += coating;
        }

        if (named.Count == 0)
        {
            problems.Add("The tag names no kind with its pure seed and germination.");
        }

        bool isAlone = named.Count == 1 || named.Sum(e => e.Percent.GetValueOrDefault(TagPart.Pure)) <= TagEntry.FractionHigh;
        named.ForEach(e => e.AskForPercent(isAlone, problems));
        var components = named.Select(e => e.Finish(named.Count == 1 ? coating : 0, remarks, problems)).ToList();
        if (problems.Count > 0)
        {
            return new SeedTagReadResult { Problems = [.. problems], OfReading = remarks };
        }

        var tag = new SeedTag
        {
            Components = [.. components.OfType<TagComponent>()],
            OtherCrop = Fraction.FromPercent(bag.GetValueOrDefault(TagPart.OtherCrop)),
            Weed = Fraction.FromPercent(bag.GetValueOrDefault(TagPart.Weed)),
            Inert = Fraction.FromPercent(Math.Min(100, inert)),
            Coating = Fraction.FromPercent(coating),
            Noxious = [.. noxious],
            NetWeight = netWeight,
            TestMonth = test,
            LotNumber = lot,
            IsTreated = treated,
            IsPreinoculated = inoculated,
        };
        return new SeedTagReadResult { Tag = tag, OfReading = remarks };
    }

    private TagEntry Current => entries.Count > 0 ? entries[^1] : Begin();

    private TagEntry Begin()
    {
        entries.Add(new TagEntry());
        return entries[^1];
    }

    /// <summary>Keeps what a line says of the whole bag, and begins a component where it names a kind.</summary>
    private void Keep(TagFacts facts, string line)
    {
        facts.Assumptions.ForEach(remarks.Assume);
        noxious.AddRange(facts.Noxious);
        netWeight = facts.NetWeight ?? netWeight;
        lot = facts.Lot ?? lot;
        treated |= facts.SaysTreated;
        inoculated |= facts.SaysInoculated;
        test = facts.Test is { } month && !(test < month) ? month : test;
        if (facts.IsAside)
        {
            remarks.LeaveAside(line);
        }

        if (facts.Kind is { } kind)
        {
            Name(Current.Kind is null ? Current : Begin(), kind, line);
        }
    }

    /// <summary>A line without numbers: a header of a table, the name of a kind, or something to leave aside.</summary>
    private void AddWords(string line, string rest, List<(TagPart Part, TagText.Mark Where)> labels)
    {
        if (labels.Count > 1)
        {
            header.Clear();
            header.AddRange(labels.Select(l => l.Part));
        }
        else if (rest.Trim(' ', ',', ':', '.').Length > 0 && labels.Count == 0 && catalog.Candidates(rest) is [var kind])
        {
            (Current.Kind is null ? Current : Begin()).Kind = kind;
        }
        else if (rest == line)
        {
            if (Current.Kind is null && labels.Count == 0 && !catalog.Candidates(rest).IsEmpty)
            {
                Current.Unclear = TagKind.Problem(rest, catalog);
            }

            remarks.LeaveAside(line);
        }
    }

    /// <summary>A row of a table: pure seed, the kind, germination and what follows it.</summary>
    private void AddRow(string line, string rest, List<(double Value, TagText.Mark Where, bool Comma)> numbers)
    {
        string words = TagText.VarietyNotStated().Replace(Without(rest, numbers.Select(n => n.Where)), " ");
        if (
            !line.Contains('%', StringComparison.Ordinal)
            && (numbers.Count < 2 || (TagKind.In(words, catalog).Kind is null && catalog.Candidates(words).IsEmpty))
        )
        {
            remarks.LeaveAside(line);
            return;
        }

        if (!words.Any(char.IsLetter))
        {
            problems.Add($"'{line}': what do these numbers stand for?");
            return;
        }

        var columns = header
            .Where(p => p is not (TagPart.OtherCrop or TagPart.Inert or TagPart.Weed or TagPart.Coating))
            .ToList();
        if (columns.Count == 0)
        {
            columns =
            [
                TagPart.Pure,
                TagPart.Germination,
                numbers.Count > 2 && numbers[2].Value >= numbers[1].Value ? TagPart.Total : TagPart.Hard,
            ];
            remarks.Assume(() => $"'{line}' gives {TagPartWords.List(columns.Take(numbers.Count))}, in this order");
        }

        if (numbers.Count > columns.Count || numbers.Count < 2)
        {
            problems.Add($"'{line}': expected {TagPartWords.List(columns)}, found {Amounts.Print(numbers.Count, 0)} numbers.");
            return;
        }

        var entry = Current.IsEmpty ? Current : Begin();
        Name(entry, words, line);
        for (int i = 0; i < numbers.Count; i++)
        {
            entry.Percent[columns[i]] = numbers[i].Value;
        }
    }

    /// <summary>A line whose numbers have their labels before or after them.</summary>
    private void AddLabelled(
        string line,
        string rest,
        List<(TagPart Part, TagText.Mark Where)> labels,
        List<(double Value, TagText.Mark Where, bool Comma)> numbers
    )
    {
        if (
            numbers.Count == labels.Count + 1
            && labels[0].Part is TagPart.Germination or TagPart.Total
            && numbers[0].Where.End < labels[0].Where.At
            && rest[numbers[0].Where.End..labels[0].Where.At].Any(char.IsLetter)
        )
        {
            remarks.Assume(() => $"the first number of '{line}' is the pure seed");
            labels.Insert(0, (TagPart.Pure, new(numbers[0].Where.At, numbers[0].Where.At)));
        }

        bool numberFirst = numbers[0].Where.At < labels[0].Where.At;
        if (labels.Count != numbers.Count)
        {
            problems.Add(
                $"'{line}': {Amounts.Print(labels.Count, 0)} labels and {Amounts.Print(numbers.Count, 0)} numbers do not pair "
                    + "off; write each part on its own line."
            );
            return;
        }

        string words = rest[..(numberFirst ? numbers[0].Where.At : labels[0].Where.At)];
        string after = Without(rest, labels.Select(l => l.Where).Concat(numbers.Select(n => n.Where)));
        if (labels.Any(l => l.Part == TagPart.Pure) && after.Any(char.IsLetter))
        {
            words = after;
        }

        if (words.Any(char.IsLetter) && (TagKind.In(words, catalog).Kind is not null || catalog.Candidates(words).Length > 1))
        {
            Name(Current.Kind is null ? Current : Begin(), words, line);
        }

        for (int i = 0; i < labels.Count; i++)
        {
            Set(labels[i].Part, numbers[i].Value, line);
        }
    }

    private void Set(TagPart part, double percent, string line)
    {
        if (
            part == TagPart.Total
            && percent >= SeedConstants.All["tag-whole-bag"]
            && !line.Contains("germ", StringComparison.OrdinalIgnoreCase)
            && !line.Contains("viab", StringComparison.OrdinalIgnoreCase)
        )
        {
            remarks.LeaveAside(line);
            return;
        }

        bool ofBag = part is TagPart.OtherCrop or TagPart.Inert or TagPart.Weed or TagPart.Coating;
        if (part == TagPart.Pure && Current.Percent.ContainsKey(TagPart.Pure))
        {
            Begin();
        }

        if (!(ofBag ? bag : Current.Percent).TryAdd(part, percent))
        {
            problems.Add($"'{line}': {TagPartWords.All[part]} stands twice.");
        }
    }

    private void Name(TagEntry entry, string words, string line)
    {
        var (kind, variety) = TagKind.In(words, catalog);
        (entry.Kind, entry.Variety) = (kind, variety);
        if (kind is null)
        {
            problems.Add($"'{line}': {TagKind.Problem(words, catalog)}");
        }
        else if (variety is not null)
        {
            remarks.Assume(() => $"'{variety}' beside {kind.ShortName} is a variety or an origin");
        }
    }

    private static string Without(string line, IEnumerable<TagText.Mark> marks)
    {
        char[] kept = line.ToCharArray();
        foreach (var mark in marks)
        {
            Array.Fill(kept, ' ', mark.At, mark.End - mark.At);
        }

        return new string(kept).Replace('%', ' ').Trim(' ', ',', ';', ':', '.', '-', '|', '/');
    }
}
