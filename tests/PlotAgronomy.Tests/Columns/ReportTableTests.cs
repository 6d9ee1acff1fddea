using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Columns;

/// <summary>A table of soil tests is read by the rules of one report, and every cell that cannot be taken is told.</summary>
public class ReportTableTests
{
    private static readonly ReportColumn[] NorthCarolina =
    [
        ReportColumn.Sample("Sample"),
        ReportColumn.Crop("Crop"),
        ReportColumn.WaterPh("pH"),
        ReportColumn.ExchangeableAcidity("Ac", CationChargeBasis.Per100CubicCentimeters),
        ReportColumn.Reading("P-I", SoilAnalyte.Phosphorus, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3),
        ReportColumn.Reading("K-I", SoilAnalyte.Potassium, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3),
        ReportColumn.SoilClass("Class"),
    ];

    private static ReportRequest Asked => new()
    {
        LimeMethod = LimeMethod.NorthCarolina,
        TargetPh = 6.0,
        System = RecommendationSystem.Find("NC"),
        Crop = CropRow.DeerTurkeyPlot,
    };

    private static ReportTable One(string header, ReportColumn column, string cell) =>
        ReportTable.Read($"{header}\tx\n{cell}\t1\n", "table", column);

    /// <summary>NCDA and CS, Circular No. 1, tables 2.3 and 2.4: P-I 25 takes 88.5 lb of P2O5, K-I 15 111.4 lb of K2O. Its lime note:
    /// pH 5.0, Ac 1.2, to 6.0 is 0.75 ton, which a report prints as 0.8.</summary>
    [Fact]
    public void A_published_example_comes_out_of_a_table()
    {
        var table = ReportTable.Read("Sample,Crop,pH,Ac,P-I,K-I,Class\nA1,,5.0,1.2,25,15,mineral\n", "county.csv", NorthCarolina);
        Assert.Empty(table.Problems);
        var row = Assert.Single(ReportAnswers.For(table, Asked).Rows);
        Assert.Equal(0.75 * 2000, row.LimeNeed!.Rate!.OfBasis.PoundsPerAcre, 1e-6);
        Assert.Equal(0.8 * 2000, row.Lime!.OfBasis.PoundsPerAcre, 1e-6);
        Assert.Equal(88.5, row.Phosphate!.Value.PoundsPerAcre, 0.05);
        Assert.Equal(111.4, row.Potash!.Value.PoundsPerAcre, 0.05);
    }

    /// <summary>Every cell as a report would be asked about it: half a word is no value, and nothing is guessed.</summary>
    [Theory]
    [InlineData("6.2", 6.2, null), InlineData("6,2", 6.2, null), InlineData(" 6.2 pH ", 6.2, null), InlineData("n/a", null, null)]
    [InlineData("", null, null), InlineData("-", null, null)]
    [InlineData("66", null, "6.6"), InlineData("6.O", null, "is it 6.0?"), InlineData("<5.0", null, "less than a limit")]
    [InlineData("6.2 ppm", null, "no unit of pH"), InlineData("acid", null, "is no number"), InlineData("0", null, "pH")]
    [InlineData("6.2.1", null, "is no number"), InlineData("NaN", null, "is no number"), InlineData("1e1", null, "no unit of pH")]
    public void A_cell_of_pH_is_a_value_or_a_problem(string cell, double? expected, string? problem)
    {
        var table = One("pH", ReportColumn.WaterPh("pH"), cell);
        Assert.Equal(expected, Assert.Single(table.Rows).Report.WaterPh?.Value);
        Assert.Equal(problem is null ? 0 : 1, table.Problems.Length);
        Assert.All(table.Problems, p => Assert.Contains(problem!, p.Text, StringComparison.Ordinal));
        Assert.All(table.Problems, p => Assert.StartsWith("line 2, 'pH': ", p.ToString(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("34", 34, "ppm", false), InlineData("<5", 5, "ppm", true), InlineData("< 5 ppm", 5, "ppm", true)]
    [InlineData("1,234", 1234, "ppm", false), InlineData("12,5", 12.5, "ppm", false), InlineData("1.234,5", 1234.5, "ppm", false)]
    [InlineData("68 lb/ac", 68, "lb/ac", false)]
    public void A_reading_keeps_its_limit_and_its_own_unit(string cell, double value, string unit, bool isUpperLimit)
    {
        var column = ReportColumn.Reading("P_ppm", SoilAnalyte.Phosphorus, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3);
        var table = One("p_PPM", column, cell);
        Assert.Empty(table.Problems);
        var reading = Assert.Single(Assert.Single(table.Rows).Report.Readings);
        Assert.Equal((value, unit, isUpperLimit), (reading.PrintedValue, SoilWords.For(reading.Unit), reading.IsUpperLimit));
    }

    [Theory]
    [InlineData("-3", "at least 0"), InlineData(">400", "more than a limit"), InlineData("l2", "is it 12?")]
    [InlineData("12 bushels", "no unit of a soil test"), InlineData("4 % saturation", "phosphorus")]
    public void A_reading_that_cannot_be_is_told(string cell, string problem)
    {
        var column = ReportColumn.Reading("P", SoilAnalyte.Phosphorus, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3);
        var table = One("P", column, cell);
        Assert.Contains(problem, Assert.Single(table.Problems).Text, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(Assert.Single(table.Rows).Report.Readings);
    }

    [Theory]
    [InlineData(','), InlineData(';'), InlineData('\t')]
    public void Fields_are_parted_by_what_parts_the_headers(char sign)
    {
        string text = "﻿Sample,pH,Note\r\nA1,6.1,\"wet, low\"\r\nA2,5.8,\r\n".Replace("wet, low", "low", StringComparison.Ordinal).Replace(',', sign);
        var table = ReportTable.Read(text, "table", ReportColumn.Sample("sample"), ReportColumn.WaterPh("PH"));
        Assert.Equal(["A1", "A2"], table.Rows.Select(r => r.Sample));
        Assert.Equal([6.1, 5.8], table.Numbers(r => r.WaterPh?.Value));
        Assert.Equal(["Note"], table.UnreadHeaders);
        Assert.Empty(table.Problems);
    }

    /// <summary>What the head of a list says of all its lines is a fact of each, unless the line says otherwise.</summary>
    [Fact]
    public void What_every_report_states_alike_is_stated_once()
    {
        var alike = new SoilReport { Laboratory = "county laboratory", SampledDepth = Length.FromInches(6), SoilClass = SoilClass.Mineral, SampleMoisture = SampleMoisture.Dried };
        var table = ReportTable.Read("pH,Class\n6.1,\n5.2,organic\n", "t", alike, ReportColumn.WaterPh("pH"), ReportColumn.SoilClass("Class"));
        Assert.Equal([SoilClass.Mineral, SoilClass.Organic], table.Rows.Select(r => r.Report.SoilClass!.Value));
        Assert.Equal([6.1, 5.2], table.Numbers(r => r.WaterPh?.Value));
        Assert.All(table.Rows, r => Assert.Equal((6.0, "county laboratory", SampleMoisture.Dried), (r.Report.SampledDepth!.Value.Inches, r.Report.Laboratory, r.Report.SampleMoisture)));
    }

    [Fact]
    public void A_short_line_and_a_sample_that_stands_twice_are_told()
    {
        const string text = "Sample,pH\nA1,6.1\nA2\nA1,6.3\n\n";
        var table = ReportTable.Read(text, "table", ReportColumn.Sample("Sample"), ReportColumn.WaterPh("pH"));
        Assert.Equal([6.1, 6.3], table.Numbers(r => r.WaterPh?.Value));
        Assert.Equal(
            ["line 3, 'Sample': expected 2 fields, found 1: the line is left out", "line 4, 'Sample': sample 'A1' stands on line 2 already"],
            table.Problems.Select(p => p.ToString())
        );
    }

    [Fact]
    public void A_header_that_is_not_there_is_refused_by_name()
    {
        var missing = Assert.Throws<DataFormatException>(() => ReportTable.Read("Sample,pH\nA1,6.1\n", "county.csv", ReportColumn.WaterPh("pH water")));
        Assert.Equal("county.csv, line 1, field 'pH water': no such column; there are Sample, pH", missing.Message);
        Assert.Throws<DataFormatException>(() => ReportTable.Read("pH,pH\n6,6\n", "t", ReportColumn.WaterPh("pH")));
        Assert.Throws<DataFormatException>(() => ReportTable.Read("", "t", ReportColumn.WaterPh("pH")));
        Assert.Throws<ArgumentException>(() => ReportTable.Read("pH\n6\n", "t"));
        Assert.Throws<ArgumentException>(() => ReportTable.Read("pH\n6\n", "t", ReportColumn.WaterPh("pH"), ReportColumn.SaltPh("PH")));
        Assert.Throws<ArgumentException>(() => ReportColumn.WaterPh(" "));
    }

    /// <summary>A row is answered as a report alone is, whatever stands in the rows around it.</summary>
    [Fact]
    public void A_row_is_answered_as_its_report_alone()
    {
        var random = new Random(19);
        var text = new System.Text.StringBuilder("Sample,Crop,pH,Ac,P-I,K-I,Class\n");
        for (int i = 0; i < 200; i++)
        {
            string[] crops = ["", "alfalfa", "deer and turkey food plot", "moon clover"];
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{i},{crops[random.Next(4)]},{random.Next(35, 85) / 10.0},{random.Next(0, 40) / 10.0},{random.Next(0, 150)},{random.Next(0, 150)},mineral\n");
        }

        var answers = ReportAnswers.For(ReportTable.Read(text.ToString(), "table", NorthCarolina), Asked);
        Assert.All(answers.Rows, row =>
        {
            var need = LimeMethod.NorthCarolina.NeedFor(row.Row.Report, 6.0);
            Assert.Equal(need.Published?.OfBasis.PoundsPerAcre, row.Lime?.OfBasis.PoundsPerAcre);
            Assert.Equal(row.Row.Crop == "moon clover", row.Crop is null);
            if (row.Crop is { } crop)
            {
                var alone = RecommendationSystem.Find("NC").Recommend(row.Row.Report, CropUse.Browsed(crop));
                Assert.Equal(alone.Phosphate?.Rate.PoundsPerAcre, row.Phosphate?.PoundsPerAcre);
                Assert.Equal(alone.Potash?.Rate.PoundsPerAcre, row.Potash?.PoundsPerAcre);
                Assert.Equal(alone.Phosphate?.Rating?.Standing, row.Phosphorus);
            }
            else
            {
                Assert.Contains(row.Findings, f => f.Code == "column-crop-unknown" && f.Text.Contains("'moon clover'", StringComparison.Ordinal));
                Assert.Null(row.Phosphate);
            }
        });
        var own = Asked with { CropWords = new Dictionary<string, CropRow> { ["Moon clover"] = CropRow.Alfalfa } };
        var table = ReportTable.Read(text.ToString(), "table", NorthCarolina);
        Assert.All(ReportAnswers.For(table, own).Rows, row => Assert.NotNull(row.Crop));
    }

    /// <summary>A line a report, blank where there is no answer; read again by a general library's rules (RFC 4180).</summary>
    [Fact]
    public void Answers_are_written_a_line_a_report()
    {
        var table = ReportTable.Read("Sample,Crop,pH,Ac,P-I,K-I,Class\n\"A,1\",,5.0,1.2,25,15,mineral\nA2,,,,,,\n", "t", NorthCarolina);
        var lines = CsvRecords.Split("answers", ReportAnswers.For(table, Asked).ToCsv());
        Assert.Equal(3, lines.Count);
        Assert.Equal(["A,1", "deer and turkey food plot", "1600"], lines[1].Fields[..3]);
        Assert.Equal(["A2", "deer and turkey food plot", "", "", "", ""], lines[2].Fields[..6]);
        Assert.NotEmpty(lines[2].Fields[8]);
    }

    /// <summary>Two bases of lime are no sum: a ton of one is not a ton of the other.</summary>
    [Fact]
    public void Unlike_limes_are_neither_added_nor_averaged()
    {
        var table = ReportTable.Read("Sample,Crop,pH,Ac,P-I,K-I,Class\nA1,,5.0,1.2,25,15,mineral\nA2,,6.4,0.4,25,15,mineral\n", "t", NorthCarolina);
        var carolina = ReportAnswers.For(table, Asked);
        Assert.Equal(800, carolina.MeanLime()!.Value.PoundsPerAcre, 1e-6);
        var smp = ReportTable.Read("pH,SMP\n5.4,6.2\n", "t", ReportColumn.WaterPh("pH"), ReportColumn.BufferPh("SMP", SoilBuffer.Smp));
        var other = ReportAnswers.For(smp, new ReportRequest { LimeMethod = LimeMethod.Find("tri-state-1995-smp"), TargetPh = 6.5 });
        Assert.NotNull(other.MeanLime());
        var refused = Assert.Throws<InvalidOperationException>(() => ReportAnswers.Join(carolina, other).MeanLime());
        Assert.Contains("different limes", refused.Message, StringComparison.Ordinal);
        Assert.Null(ReportAnswers.For(smp, new ReportRequest()).MeanLime());
    }

    /// <summary>More digits than a number holds (IEEE 754: 309 before the point are beyond a double) are no number, and the row is
    /// told.</summary>
    [Theory, InlineData("pH"), InlineData("SMP")]
    public void A_cell_of_endless_digits_is_told(string column)
    {
        string endless = new('9', 400);
        string cells = column == "pH" ? $"{endless},6.2" : $"5.4,{endless}";
        var table = ReportTable.Read($"pH,SMP\n{cells}\n", "t", ReportColumn.WaterPh("pH"), ReportColumn.BufferPh("SMP", SoilBuffer.Smp));
        Assert.Contains($"'{endless}' is no number", Assert.Single(table.Problems).ToString(), StringComparison.Ordinal);
    }

    /// <summary>A pH to aim at belongs to the crop; none is taken in silence (handbook, target pH by crop: 5.0 to 7.0).</summary>
    [Fact]
    public void Lime_is_not_answered_to_a_pH_that_nobody_stated()
    {
        var table = ReportTable.Read("pH,SMP\n5.4,6.2\n", "t", ReportColumn.WaterPh("pH"), ReportColumn.BufferPh("SMP", SoilBuffer.Smp));
        var refused = Assert.Throws<ArgumentException>(
            () => ReportAnswers.For(table, new ReportRequest { LimeMethod = LimeMethod.Find("tri-state-1995-smp") }));
        Assert.Equal("request", refused.ParamName);
        Assert.Contains("no pH to aim at (4 to 9)", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>What the laboratory of a state means by its numbers comes from its own method and system.</summary>
    [Fact]
    public void A_profile_knows_extractants_units_and_methods()
    {
        var profile = LaboratoryProfile.For(Institution.NorthCarolina);
        Assert.Equal(LimeMethod.NorthCarolina, profile.LimeMethod);
        Assert.Equal("'P': phosphorus in North Carolina index (Mehlich-3)", profile.Phosphorus("P").ToString());
        Assert.Throws<InvalidOperationException>(() => LaboratoryProfile.For(Institution.Find("vermont")).BufferPh("BpH"));
        var table = ReportTable.Read("pH;Ac;P;K;class\n5,0;1,2;25;15;mineral\n", "t", ReportColumn.WaterPh("pH"), ReportColumn.ExchangeableAcidity("Ac", CationChargeBasis.Per100CubicCentimeters), profile.Phosphorus("P"), profile.Potassium("K"), ReportColumn.SoilClass("class"));
        var row = ReportAnswers.For(table, profile.Ask(6.0, CropRow.DeerTurkeyPlot)).Rows[0];
        Assert.Equal(1600, row.Lime!.OfBasis.PoundsPerAcre, 1e-6);
        Assert.Equal(88.5, row.Phosphate!.Value.PoundsPerAcre, 0.05);
        Assert.Throws<ArgumentException>(() => LaboratoryProfile.For(Institution.Find("minnesota")));
    }
}
