using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>A tag while its lines are being read.</summary>
internal sealed class TagDraft(KindCatalog catalog)
{
    private const double SumTolerancePercent = 0.05;

    private readonly List<TagEntry> entries = [];
    private readonly Dictionary<TagPart, double> bag = [];
    private readonly List<NoxiousWeed> noxious = [];
    private readonly List<Finding> findings = [];
    private readonly List<string> problems = [];
    private readonly List<TagPart> header = [];
    private TestMonth? test;
    private Mass? netWeight;
    private string? lot;
    private bool treated;
    private bool inoculated;

    internal void Add(string line)
    {
        string rest = TakeFacts(line);
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
            TagEntry.Assume(findings, $"the comma in '{line}' is a decimal comma");
        }
    }

    internal SeedTagReading Finish()
    {
        var named = entries.Where(e => !e.IsEmpty).ToList();
        double coating = bag.GetValueOrDefault(TagPart.Coating);
        double inert = bag.GetValueOrDefault(TagPart.Inert);
        double other = bag.GetValueOrDefault(TagPart.OtherCrop) + bag.GetValueOrDefault(TagPart.Weed) + named.Sum(e => e.Percent.GetValueOrDefault(TagPart.Pure));
        if (coating > 0 && Math.Abs(100 - other - inert) > SumTolerancePercent && Math.Abs(100 - other - inert - coating) <= SumTolerancePercent)
        {
            TagEntry.Assume(findings, $"the coating of {TagEntry.Text(coating)} % stands beside the inert matter, since the parts sum to 100 only so; it is counted into it");
            inert += coating;
        }

        if (named.Count == 0)
        {
            problems.Add("The tag names no kind with its pure seed and germination.");
        }

        var components = named.Select(e => e.Finish(named.Count == 1 ? coating : 0, findings, problems)).ToList();
        if (problems.Count > 0)
        {
            return new SeedTagReading { Problems = [.. problems], Findings = Finding.InOrder(findings) };
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
        return new SeedTagReading { Tag = tag, Findings = Finding.InOrder(findings.Concat(tag.Check())) };
    }

    private TagEntry Current => entries.Count > 0 ? entries[^1] : Begin();

    private TagEntry Begin()
    {
        entries.Add(new TagEntry());
        return entries[^1];
    }

    /// <summary>Takes what is no percentage out of a line.</summary>
    private string TakeFacts(string line)
    {
        string rest = TagText.Take(TagText.Noxious(), line, out string? weeds);
        ReadNoxious(weeds);
        rest = TagText.TakeTestMonth(rest, out var tested, out string? assumption);
        if (assumption is not null)
        {
            TagEntry.Assume(findings, assumption);
        }

        rest = TagText.Take(TagText.NetWeight(), rest, out string? net);
        if (net is not null && Amounts.TryReadMass(net, out var mass, out _))
        {
            netWeight = mass;
        }

        rest = TagText.Take(TagText.Lot(), rest, out string? number);
        lot = number ?? lot;
        bool saysTreated = TagText.Treated().IsMatch(rest);
        bool saysInoculated = TagText.Inoculated().IsMatch(rest);
        treated |= saysTreated && !TagText.Untreated().IsMatch(rest);
        inoculated |= saysInoculated;
        if ((saysTreated || saysInoculated) && !rest.Contains('%', StringComparison.Ordinal))
        {
            return "";
        }

        rest = TagText.Take(TagText.Kind(), rest, out string? kind);
        if (kind is not null)
        {
            var entry = Current.Kind is null ? Current : Begin();
            entry.Kind = FindKind(kind, line, out string? variety);
            entry.Variety = variety;
        }

        rest = TagText.Take(TagText.Variety(), rest, out string? named);
        if (named is not null && !TagText.VarietyNotStated().IsMatch(named) && named.Length > 0 && TagText.LabelsIn(named).Count == 0)
        {
            Current.Variety = named;
        }

        if (TagText.Origin().IsMatch(rest) && TagText.LabelsIn(rest).Count < 2)
        {
            rest = TagText.Take(TagText.Origin(), rest, out string? origin);
            Current.Origin = origin;
        }

        if (tested is { } month)
        {
            test = test is { } known && known < month ? known : month;
            if (entries.Count > 0 && !Current.IsEmpty && line.Contains('%', StringComparison.Ordinal))
            {
                Current.Test = month;
            }
        }

        return rest;
    }

    private void ReadNoxious(string? weeds)
    {
        if (string.IsNullOrWhiteSpace(weeds) || weeds.Contains("none", StringComparison.OrdinalIgnoreCase))
        {
            return;
        }

        foreach (System.Text.RegularExpressions.Match m in TagText.NoxiousCount().Matches(weeds))
        {
            string name = (m.Groups["name"].Success ? m.Groups["name"] : m.Groups["name2"]).Value.Trim();
            string count = (m.Groups["n"].Success ? m.Groups["n"] : m.Groups["n2"]).Value;
            double number = double.Parse(count, System.Globalization.CultureInfo.InvariantCulture);
            if (number > 0 && name.Length > 0)
            {
                noxious.Add(new NoxiousWeed { Name = name, SeedsPerPound = number });
                TagEntry.Assume(findings, $"{count} {name} is a number of seeds per lb");
            }
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
        else if (rest.Trim(' ', ',', ':', '.').Length > 0 && labels.Count == 0 && catalog.TryFind(rest, out var kind, out _))
        {
            (Current.Kind is null ? Current : Begin()).Kind = kind;
        }
        else if (rest == line)
        {
            findings.Add(FindingCatalog.Create("seed-tag-line-aside", ("line", line)));
        }
    }

    /// <summary>A row of a table: pure seed, the kind, germination and what follows it.</summary>
    private void AddRow(string line, string rest, List<(double Value, TagText.Mark Where, bool Comma)> numbers)
    {
        string words = TagText.VarietyNotStated().Replace(Without(rest, numbers.Select(n => n.Where)), " ");
        if (!words.Any(char.IsLetter))
        {
            problems.Add($"'{line}': what do these numbers stand for?");
            return;
        }

        var columns = header.Where(p => p is not (TagPart.OtherCrop or TagPart.Inert or TagPart.Weed or TagPart.Coating)).ToList();
        if (columns.Count == 0)
        {
            columns = [TagPart.Pure, TagPart.Germination, numbers.Count > 2 && numbers[2].Value >= numbers[1].Value ? TagPart.Total : TagPart.Hard];
            TagEntry.Assume(findings, $"'{line}' gives {string.Join(", ", columns.Take(numbers.Count).Select(InWords))}, in this order");
        }

        if (numbers.Count > columns.Count || numbers.Count < 2)
        {
            problems.Add($"'{line}': expected {string.Join(", ", columns.Select(InWords))}, found {Amounts.Print(numbers.Count, 0)} numbers.");
            return;
        }

        var entry = Current.IsEmpty ? Current : Begin();
        entry.Kind = FindKind(words, line, out string? variety);
        entry.Variety = variety;
        for (int i = 0; i < numbers.Count; i++)
        {
            entry.Percent[columns[i]] = numbers[i].Value;
        }
    }

    /// <summary>A line whose numbers have their labels before or after them.</summary>
    private void AddLabelled(string line, string rest, List<(TagPart Part, TagText.Mark Where)> labels, List<(double Value, TagText.Mark Where, bool Comma)> numbers)
    {
        if (numbers.Count == labels.Count + 1 && labels[0].Part is TagPart.Germination or TagPart.Total && numbers[0].Where.End < labels[0].Where.At
            && rest[numbers[0].Where.End..labels[0].Where.At].Any(char.IsLetter))
        {
            TagEntry.Assume(findings, $"the first number of '{line}' is the pure seed");
            labels.Insert(0, (TagPart.Pure, new(numbers[0].Where.At, numbers[0].Where.At)));
        }

        bool numberFirst = numbers[0].Where.At < labels[0].Where.At;
        if (labels.Count != numbers.Count)
        {
            problems.Add($"'{line}': {Amounts.Print(labels.Count, 0)} labels and {Amounts.Print(numbers.Count, 0)} numbers do not pair off; write each part on its own line.");
            return;
        }

        string words = rest[..(numberFirst ? numbers[0].Where.At : labels[0].Where.At)];
        string after = Without(rest, labels.Select(l => l.Where).Concat(numbers.Select(n => n.Where)));
        if (labels.Any(l => l.Part == TagPart.Pure) && after.Any(char.IsLetter))
        {
            words = after;
        }

        if (words.Any(char.IsLetter) && FindKindOrNull(words, out string? variety) is { } kind)
        {
            var entry = Current.Kind is null ? Current : Begin();
            (entry.Kind, entry.Variety) = (kind, variety);
        }
        else if (words.Any(char.IsLetter) && catalog.Candidates(words).Length > 1)
        {
            _ = FindKind(words, line, out _);
        }

        for (int i = 0; i < labels.Count; i++)
        {
            Set(labels[i].Part, numbers[i].Value, line);
        }
    }

    private void Set(TagPart part, double percent, string line)
    {
        bool ofBag = part is TagPart.OtherCrop or TagPart.Inert or TagPart.Weed or TagPart.Coating;
        if (part == TagPart.Pure && Current.Percent.ContainsKey(TagPart.Pure))
        {
            Begin();
        }

        if (!(ofBag ? bag : Current.Percent).TryAdd(part, percent))
        {
            problems.Add($"'{line}': {InWords(part)} stands twice.");
        }
    }

    private CropKind? FindKind(string words, string line, out string? variety)
    {
        if (FindKindOrNull(words, out variety) is { } kind)
        {
            return kind;
        }

        _ = catalog.TryFind(words.Trim(' ', ',', ':', '.', '-'), out _, out string problem);
        problems.Add($"'{line}': {problem}");
        return null;
    }

    /// <summary>The kind a text names, in full or with words before or after it that are taken as its variety.</summary>
    private CropKind? FindKindOrNull(string text, out string? variety)
    {
        variety = null;
        if (catalog.TryFind(text, out var whole, out _))
        {
            return whole;
        }

        string[] words = [.. text.Split([' ', ',', ':', '\t', '"', '|', ';'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Any(char.IsLetter))];
        for (int length = words.Length - 1; length > 0; length--)
        {
            var fitting = Enumerable.Range(0, words.Length - length + 1)
                .Select(start => (Start: start, Kinds: catalog.Candidates(string.Join(' ', words[start..(start + length)]))))
                .Where(f => !f.Kinds.IsEmpty).ToList();
            if (fitting.Count == 1 && fitting[0].Kinds.Length == 1)
            {
                variety = string.Join(' ', words[..fitting[0].Start].Concat(words[(fitting[0].Start + length)..]));
                TagEntry.Assume(findings, $"'{variety}' beside {fitting[0].Kinds[0].CommonName} is a variety or an origin");
                return fitting[0].Kinds[0];
            }

            if (fitting.Count > 0)
            {
                return null;
            }
        }

        return null;
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

    private static string InWords(TagPart part) => part switch
    {
        TagPart.Pure => "pure seed",
        TagPart.Germination => "germination",
        TagPart.Hard => "hard seed",
        TagPart.Dormant => "dormant seed",
        TagPart.Total => "total germination",
        TagPart.OtherCrop => "other crop seed",
        TagPart.Inert => "inert matter",
        TagPart.Weed => "weed seed",
        _ => "coating",
    };
}
