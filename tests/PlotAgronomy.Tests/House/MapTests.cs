using PlotAgronomy.Map.Layout;
using PlotAgronomy.Map.Model;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Rooms and folders as the source files lie.</summary>
public class MapTests
{
    /// <summary>Folders that still use one another; no other circle may appear, and these are to go.</summary>
    private static readonly string[][] KnownFolderCycles =
    [
        ["Nutrients", "Nutrients/Systems"],
        ["Fertilizers", "Fertilizers/Solver"],
        ["Planning", "Planning/Comparing", "Planning/Reading", "Planning/Sections"],
    ];

    private static readonly Lazy<CodeModel> LazyLibrary = new(() => CodeModel.LoadLibrary(Repository.Root));

    private static CodeModel Library => LazyLibrary.Value;

    private static Grouping Rooms => new(new FileGraph(Library), new Folders(Library).RoomOf);

    [Fact]
    public void Every_name_in_the_library_is_understood()
    {
        Assert.Empty(Library.NotUnderstood);
        Assert.True(Library.Files.Count > 500);
        Assert.True(Library.References.Count > 10_000);
    }

    [Fact]
    public void Every_folder_of_a_room_has_a_floor() =>
        Assert.Empty(Rooms.Names.Where(room => !FloorTests.Floors.ContainsKey(room)));

    [Fact]
    public void No_rooms_use_one_another_in_a_circle() =>
        Assert.Empty(Rooms.Cycles().Select(cycle => string.Join(" <-> ", cycle)));

    [Fact]
    public void A_file_uses_files_of_its_own_room_and_of_lower_floors_only()
    {
        var rooms = Rooms;
        Assert.Empty(rooms.Edges()
            .Where(e => FloorTests.Floors[rooms.Of(e.To)] >= FloorTests.Floors[rooms.Of(e.From)])
            .Select(e => $"{e.From} uses {e.To}: {string.Join(", ", e.Used)}"));
    }

    [Fact]
    public void Folders_use_one_another_in_a_circle_only_where_known()
    {
        var cycles = new Grouping(new FileGraph(Library), new Folders(Library).FolderOf).Cycles();
        var unknown = cycles.Where(cycle => !KnownFolderCycles.Any(known => cycle.All(known.Contains)));
        Assert.Empty(unknown.Select(cycle => string.Join(" <-> ", cycle)));
    }
}
