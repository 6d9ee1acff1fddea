using PlotAgronomy.Map.Layout;
using PlotAgronomy.Map.Model;
using PlotAgronomy.Map.Users;

namespace PlotAgronomy.Tests.House;

/// <summary>What counts as a use, shown on sources of a few lines.</summary>
public class MapModelTests
{
    private const string Shop = """
        namespace Tiny;
        class Price
        {
            public Price() { }
            public int Cents { get; init; }
            public static Price operator +(Price a, Price b) => a;
            public static explicit operator int(Price price) => price.Cents;
            public static implicit operator Price(string text) => new();
            public void Deconstruct(out int dollars, out int cents) => (dollars, cents) = (Cents / 100, Cents % 100);
        }
        class Shelf : System.Collections.IEnumerable
        {
            public string this[int place] => "";
            public void Add(int item) { }
            public System.Collections.IEnumerator GetEnumerator() => null!;
        }
        class Parent { protected Parent(int size) { } }
        static class Words
        {
            public static string Louder(this string text) => text;
            extension(string text)
            {
                public string Softest => text;
                public string Softer() => text;
            }
        }
        class MarkAttribute : System.Attribute { public int Depth { get; set; } }
        """;

    [Theory]
    [InlineData("object Make() => new Price();", "Price.new")]
    [InlineData("Price Make() { return new(); }", "Price.new")]
    [InlineData("object Sum(Price a, Price b) => a + b;", "Price.op_Addition")]
    [InlineData("void Grow(Price a, Price b) => a += b;", "Price.op_Addition")]
    [InlineData("int Cast(Price a) => (int)a;", "Price.op_Explicit")]
    [InlineData("Price Convert() => \"two\";", "Price.op_Implicit")]
    [InlineData("string First(Shelf shelf) => shelf[0];", "Shelf.this[]")]
    [InlineData("string? First(Shelf? shelf) => shelf?[0];", "Shelf.this[]")]
    [InlineData("Shelf Fill() => new() { 1, 2 };", "Shelf.Add")]
    [InlineData("void Look(Shelf shelf) { foreach (var item in shelf) { } }", "Shelf.GetEnumerator")]
    [InlineData("string Shout() => \"hay\".Louder();", "Words.Louder")]
    [InlineData("System.Func<string> Shout() => \"hay\".Louder;", "Words.Louder")]
    [InlineData("string Hush() => \"hay\".Softer();", "Words.Softer")]
    [InlineData("string Hush() => \"hay\".Softest;", "Words.Softest")]
    [InlineData("bool Is(object thing) => thing is Price;", "Price")]
    [InlineData("bool Is(object thing) => thing is Price { Cents: > 2 };", "Price.Cents")]
    [InlineData("bool Is(object thing) => thing is Price(1, 2);", "Price.Deconstruct")]
    [InlineData("void Split(Price price) { var (dollars, cents) = price; }", "Price.Deconstruct")]
    [InlineData("[Mark] void Marked() { }", "MarkAttribute.new")]
    [InlineData("[Mark(Depth = 2)] void Marked() { }", "MarkAttribute.Depth")]
    [InlineData("object List() => new System.Collections.Generic.List<Price>();", "Price")]
    [InlineData("string Name() => nameof(Words.Louder);", "Words.Louder")]
    [InlineData("class Child() : Parent(3);", "Parent.new")]
    [InlineData("class Child : Parent { Child() : base(3) { } }", "Parent.new")]
    public void Each_way_to_use_makes_an_edge(string use, string used)
    {
        var model = TinySources.Library(("Shop.cs", Shop), ("User.cs", $"namespace Tiny; class User {{ {use} }}"));
        Assert.Empty(model.NotUnderstood);
        var edge = Assert.Single(new FileGraph(model).Edges);
        Assert.Equal(("src/Tiny/User.cs", "src/Tiny/Shop.cs"), (edge.From, edge.To));
        Assert.Contains(used, edge.Used.Select(u => u.Name));
        Assert.All(edge.Used, u => Assert.Equal(1, u.Line));
    }

    [Fact]
    public void Locals_comments_and_foreign_code_make_no_edge()
    {
        const string user = """
            namespace Tiny;
            class User { int Price() { int shelf = System.Math.Abs(1); return shelf; /* Words */ } }
            """;
        Assert.Empty(new FileGraph(TinySources.Library(("Shop.cs", Shop), ("User.cs", user))).Edges);
    }

    [Fact]
    public void A_name_without_a_meaning_is_reported()
    {
        var model = TinySources.Library(("User.cs", "namespace Tiny; class User { object Say() => Nowhere; }"));
        Assert.Equal(["src/Tiny/User.cs:1 Nowhere"], model.NotUnderstood);
    }

    [Fact]
    public void A_type_in_several_files_lives_in_the_file_of_its_name()
    {
        var model = TinySources.Library(
            ("Ant.More.cs", "namespace Tiny; partial class Ant { int More => 1; }"),
            ("Ant.cs", "namespace Tiny; partial class Ant { object Copy() => new Ant(); }"));
        Assert.Equal("src/Tiny/Ant.cs", Assert.Single(model.Members.Values, m => m.Kind == MemberKind.Type).File);
        Assert.Equal("src/Tiny/Ant.cs", Assert.Single(model.Members.Values, m => m.Kind == MemberKind.Constructor).File);
        Assert.Equal("src/Tiny/Ant.More.cs", Assert.Single(model.Members.Values, m => m.Name == "More").File);
    }

    [Fact]
    public void A_first_folder_is_a_room_when_a_file_bears_its_namespace()
    {
        var folders = new Folders(TinySources.Library(
            ("Ant.cs", "namespace Tiny; class Ant;"),
            ("Topic/Bee.cs", "namespace Tiny; class Bee;"),
            ("Room/Cow.cs", "namespace Tiny.Room; class Cow;"),
            ("Room/Inner/Dog.cs", "namespace Tiny.Room; class Dog;")));
        Assert.Equal(("", ""), (folders.FolderOf("src/Tiny/Ant.cs"), folders.RoomOf("src/Tiny/Ant.cs")));
        Assert.Equal(("Topic", ""), (folders.FolderOf("src/Tiny/Topic/Bee.cs"), folders.RoomOf("src/Tiny/Topic/Bee.cs")));
        Assert.Equal(("Room", "Room"), (folders.FolderOf("src/Tiny/Room/Cow.cs"), folders.RoomOf("src/Tiny/Room/Cow.cs")));
        Assert.Equal("Room/Inner", folders.FolderOf("src/Tiny/Room/Inner/Dog.cs"));
        Assert.Equal("Room", folders.RoomOf("src/Tiny/Room/Inner/Dog.cs"));
    }

    [Fact]
    public void A_path_goes_through_interfaces_overrides_and_initializers()
    {
        var model = TinySources.Library(("All.cs", """
            namespace Tiny;
            interface IStep { void Run(); }
            abstract class Half : IStep { public abstract void Run(); }
            class Whole : Half { readonly int _size = End.Here(); public override void Run() => End.There(); }
            static class End { public static int Here() => 0; public static void There() { } }
            static class Start { static void Go(IStep step) => step.Run(); static object Make() => new Whole(); }
            """));
        Assert.Equal(["Start.Go", "IStep.Run", "Half.Run", "Whole.Run", "End.There"], Path(model, "Start.Go", "End.There"));
        Assert.Equal(["Start.Make", "Whole.new", "Whole._size", "End.Here"], Path(model, "Start.Make", "End.Here"));
        Assert.Empty(Path(model, "End.Here", "Start.Go"));
    }

    [Fact]
    public void A_name_of_several_members_lists_them_and_one_of_none_says_so()
    {
        var model = TinySources.Library(
            ("A.cs", "namespace Tiny.A; class Ant { void Go() { } void Go(int far) { } }"),
            ("B.cs", "namespace Tiny.B; class Ant { void Go() { } }"));
        Assert.Equal(2, MemberFinder.Find(model, "A.Ant.Go").Count);
        var several = Assert.Throws<InvalidDataException>(() => MemberFinder.Find(model, "Ant.Go"));
        Assert.EndsWith("2 members: Tiny.A.Ant.Go, Tiny.B.Ant.Go", several.Message, StringComparison.Ordinal);
        var none = Assert.Throws<InvalidDataException>(() => MemberFinder.Find(model, "Ant.Stay"));
        Assert.StartsWith("No member is called 'Ant.Stay'", none.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Public_members_are_sorted_by_their_farthest_user()
    {
        const string tool = """
            namespace Tiny.Low;
            public interface IShown { string Show(); }
            public sealed class Tool : IShown
            {
                public int ForOthers => 1;
                public int ForOwn => 2;
                public int ForDocs => 3;
                public int ForTests => 4;
                public int ForNobody => ForOwn;
                public string Show() => "";
                public override string ToString() => "";
                internal int Hidden => 5;
            }
            """;
        const string user = """
            namespace Tiny.High;
            class User { int Use(Low.Tool tool, Low.IShown shown) => tool.ForOthers + shown.Show().Length; }
            """;
        var model = TinySources.Everything(
            [("Low/Tool.cs", tool), ("High/User.cs", user)],
            [("Checks.cs", "class Checks { int Use(Tiny.Low.Tool tool) => tool.ForTests + tool.ForDocs + tool.ForOthers; }")]);
        var docs = new DocWords(["```csharp\ntool.ForDocs\n```\ntool.ForTests"]);
        var uses = new MemberUses(model, docs).Public().ToDictionary(u => u.Member.ShortName, u => u.Farthest);
        Assert.Equal(UsedBy.AnotherRoom, uses["Tool"]);
        Assert.Equal(UsedBy.AnotherRoom, uses["Tool.ForOthers"]);
        Assert.Equal(UsedBy.AnotherRoom, uses["Tool.Show"]);
        Assert.Equal(UsedBy.OwnRoomOnly, uses["Tool.ForOwn"]);
        Assert.Equal(UsedBy.TestsAndDocsOnly, uses["Tool.ForDocs"]);
        Assert.Equal(UsedBy.TestsOnly, uses["Tool.ForTests"]);
        Assert.Equal(UsedBy.Nobody, uses["Tool.ForNobody"]);
        Assert.Equal(UsedBy.ForeignCalls, uses["Tool.ToString"]);
        Assert.DoesNotContain("Tool.Hidden", uses.Keys);
    }

    [Fact]
    public void Unused_is_what_only_tests_use_and_an_unused_type_stands_for_its_members()
    {
        const string tool = """
            namespace Tiny;
            public class Tool
            {
                public int Used => 1;
                public int Tested => 2;
                internal int Hidden => 3;
                internal int Set { get; } = 4;
                private int Own => 5;
            }
            public class Spare { public int Size => 5; public Spare Copy() => new(); }
            class User { int Use(Tool tool) => tool.Used; int Go(User user) => 1; }
            """;
        var model = TinySources.Everything(
            [("Tool.cs", tool)],
            [("Checks.cs", "class Checks { int Use(Tiny.Tool tool) => tool.Tested; }")]);
        var unused = new MemberUses(model, new DocWords(["Ask the `Spare.Size` of a Tool."])).Unused();
        Assert.Equal(["Spare", "Tool.Hidden", "Tool.Set", "Tool.Tested", "User"], unused.Select(u => u.Member.ShortName));
        Assert.Equal(["Spare"], unused.Where(u => u.InProse).Select(u => u.Member.ShortName));
        Assert.Equal(["Tool.Tested"], unused.Where(u => u.TestFiles > 0).Select(u => u.Member.ShortName));
    }

    [Fact]
    public void A_use_names_its_first_line_and_members_come_before_types()
    {
        var model = TinySources.Library(
            ("Ant.cs", "namespace Tiny; class Ant { internal static int Legs => 6; }"),
            ("User.cs", "namespace Tiny;\nclass User\n{\n    int A => Ant.Legs;\n    int B => Ant.Legs;\n}"));
        Assert.Equal(["Ant.Legs:4", "Ant:4"], Assert.Single(new FileGraph(model).Edges).Used.Select(u => u.ToString()));
    }

    private static IEnumerable<string> Path(CodeModel model, string from, string to) =>
        new CallGraph(model).Path(MemberFinder.Find(model, from), MemberFinder.Find(model, to))
            .Select(id => model.Members[id].ShortName);
}
