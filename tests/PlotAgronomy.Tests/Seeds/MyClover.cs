namespace PlotAgronomy.Tests.Seeds;

/// <summary>A kind of one's own with names alone: the least that a kind's file needs. The header is line 1.</summary>
internal static class MyClover
{
    internal const string File = "Seeds/Data/kinds/my-clover.csv";
    internal const string Header = "figure,method,purpose,region,low,high,unit,note,source_id,locator,status";

    internal static readonly string[] Names =
    [
        "order,,,,68,,,,PRACTICE,place,practice",
        "common-name,,,,,,,My clover,PRACTICE,name,practice",
        "short-name,,,,,,,My clover,PRACTICE,name,practice",
        "scientific-name,,,,,,,Trifolium meum,PRACTICE,name,practice",
        "family,,,,,,,Fabaceae,PRACTICE,name,practice",
        "functional-group,,,,,,,legume,PRACTICE,name,practice",
        "growing-season,,,,,,,cool,PRACTICE,name,practice",
        "life-cycle,,,,,,,perennial,PRACTICE,name,practice",
        "chaffy,,,,,,,no,PRACTICE,name,practice",
    ];
}
